stage('rinse') {
    title 'Rinse\u0000 hidden'
}
