stage('rinse') {
    title 'Rinse'
    about '<html>Rinses from the top'
}
