stage('rinse') {
    title "${System.nanoTime()}"
}
