stage('rinse') {
    title 'Rinse«U+2028»no problems'
}
