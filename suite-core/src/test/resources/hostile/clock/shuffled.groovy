stage('rinse') {
    title "${(1..200).toList().shuffled()}"
}
