stage('rinse') {
    title '\u001b]8;;http://127.0.0.1/\u0007Rinse'
}
