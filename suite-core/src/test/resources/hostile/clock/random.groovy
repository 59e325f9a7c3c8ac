stage('rinse') {
    title "${Math.random()}"
}
