stage('rinse') {
    title "${UUID.randomUUID()}"
}
