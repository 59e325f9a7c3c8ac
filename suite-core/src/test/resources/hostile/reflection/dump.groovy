stage('rinse') {
    title delegate.dump()
}
