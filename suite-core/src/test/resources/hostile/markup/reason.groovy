stage('rinse') {
    title 'Rinse'
    before { needs 'washed', why: '<html><b>approved' }
}
