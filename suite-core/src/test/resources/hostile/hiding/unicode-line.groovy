stage('rinse') {
    title 'Rinse' // «U+202E» approved
}
