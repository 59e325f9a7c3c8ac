stage('rinse') {
    title 'not approved\rapproved'
}
