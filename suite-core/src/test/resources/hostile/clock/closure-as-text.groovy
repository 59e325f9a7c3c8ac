stage('rinse') {
    title "${[{ -> }]}"
}
