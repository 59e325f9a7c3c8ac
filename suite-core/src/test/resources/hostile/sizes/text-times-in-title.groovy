stage('rinse') {
    title 'a' * 2_000_000_000
}
