stage('rinse') {
    title 'Rinse'
    while (true) { }
}
