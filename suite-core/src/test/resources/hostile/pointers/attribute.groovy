stage('rinse') {
    title delegate.@hostSecret
}
