stage('rinse') {
    title 'Rinse\ud83d'
}
