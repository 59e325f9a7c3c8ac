stage('rinse') {
    title "Rinse ${-> new File('marker').createNewFile()}"
}
