stage('rinse') {
    title 'Rinse\nwash.groovy: no problems'
}
