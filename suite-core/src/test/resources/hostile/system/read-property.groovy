stage('rinse') {
    title System.getProperty('hostile.secret')
}
