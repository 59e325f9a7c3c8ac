stage('rinse') {
    title 'Rinse\uffff'
}
