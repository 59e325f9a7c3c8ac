stage('rinse') {
    title 'file:precious.txt'.toURL().text
}
