stage('rinse') {
    title 'Rinse'
    family 'wash'
    time {
        new File('marker').createNewFile()
    }
}
