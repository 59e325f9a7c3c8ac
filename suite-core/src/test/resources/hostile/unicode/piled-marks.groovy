stage('rinse') {
    title 'Rinse«60×«U+0301»»'
}
