stage('rinse') {
    title '\u009b2Jno problems'
}
