stage('rinse') {
    title '<html><h1>Approved</h1>'
}
