stage('rinse') {
    inputs { count 'passes', from: 1, to: 3, usual: 1 }
    def p«U+0430»sses = 9
    title 'Rinse'
}
