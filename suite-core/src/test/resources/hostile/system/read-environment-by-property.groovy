stage('rinse') {
    title System.env.HOSTILE_SECRET
}
