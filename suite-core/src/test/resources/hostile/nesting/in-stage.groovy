stage('rinse') {
    title 'Rinse'
    time {
        attended «2000×(»1«2000×)»
    }
}
