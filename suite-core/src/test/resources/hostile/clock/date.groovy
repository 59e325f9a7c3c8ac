stage('rinse') {
    title "${new Date().time}"
}
