stage('rinse') {
    title 'Rinse\u0007'
}
