stage('rinse') {
    title "${java.time.Instant.now()}"
}
