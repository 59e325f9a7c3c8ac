stage('rinse') {
    title 'Rinse«U+061C» 12-34'
}
