stage('rinse') {
    title 'a'«9000× + 'a'»
}
