stage('rinse') {
    title 'Rinse«byte ED»«byte A0»«byte BD»'
}
