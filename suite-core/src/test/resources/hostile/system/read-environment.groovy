stage('rinse') {
    title System.getenv('HOSTILE_SECRET')
}
