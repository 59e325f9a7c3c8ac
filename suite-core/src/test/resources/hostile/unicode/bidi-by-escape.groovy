stage('rinse') {
    title 'Rinse \u202e50 PBG rof'
}
