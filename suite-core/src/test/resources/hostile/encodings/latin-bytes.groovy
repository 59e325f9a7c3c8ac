stage('rinse') {
    title 'Caf«byte E9» rinse'
}
