stage('rinse') {
    this.evaluate("new File('marker').createNewFile()")
}
