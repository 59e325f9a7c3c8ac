stage('rinse') {
    title "${{ -> }.hashCode()}"
}
