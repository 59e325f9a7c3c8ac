stage('rinse') {
    title 'Ri«U+200B»nse'
}
