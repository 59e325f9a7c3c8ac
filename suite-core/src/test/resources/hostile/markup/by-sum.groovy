stage('rinse') {
    title '<ht' + 'ml><b>Approved'
}
