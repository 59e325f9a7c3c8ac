stage('rinse') {
    title 'Ri«U+FEFF»nse'
}
