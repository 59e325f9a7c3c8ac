stage('rinse') {
    title new URL('file:precious.txt').text
}
