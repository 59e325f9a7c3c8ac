stage('rinse') {
    title "${System.properties}"
}
