stage('rinse') {
    title "${new Random().nextLong()}"
}
