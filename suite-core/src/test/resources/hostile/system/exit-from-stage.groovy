stage('rinse') {
    title 'Rinse'
    checks { System.exit(3) }
}
