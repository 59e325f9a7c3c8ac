stage('rinse') {
    title "${«260×(a) -> »1}"
}
