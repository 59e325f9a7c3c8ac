stage('rinse') {
    title 'Rinse'
    revision «1200000×7»
}
