stage('rinse') {
    title '<html>' * 1
}
