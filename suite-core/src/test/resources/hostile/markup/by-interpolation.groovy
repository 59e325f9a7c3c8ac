def kind = 'html'
stage('rinse') {
    title "<$kind><b>Approved"
}
