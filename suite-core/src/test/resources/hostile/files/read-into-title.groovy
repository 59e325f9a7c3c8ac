stage('rinse') {
    title new File('precious.txt').text
}
