stage('rinse') {
    title 'Rinse'
    checks { confirm '<html><b>done' }
}
