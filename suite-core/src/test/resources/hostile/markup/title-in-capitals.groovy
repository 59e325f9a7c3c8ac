stage('rinse') {
    title '<HtMl><b>Approved</b>'
}
