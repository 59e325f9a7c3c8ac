stage('rinse') {
    titl«U+0435» 'Rinse'
}
