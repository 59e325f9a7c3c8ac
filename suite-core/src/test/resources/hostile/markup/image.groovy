stage('rinse') {
    title '<html><img src="http://127.0.0.1:«port»/">'
}
