stage('rinse') {
    title 'Rinse«U+200F» (1)'
}
