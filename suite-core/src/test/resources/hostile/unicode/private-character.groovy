stage('rinse') {
    title 'Rinse\ue000'
}
