stage('rinse') {
    @Grab('far:away-closure:1') def passes = 1
    title 'Rinse'
}
