stage('rinse') {
    title 'Rinse«byte C0»«byte A7» free'
}
