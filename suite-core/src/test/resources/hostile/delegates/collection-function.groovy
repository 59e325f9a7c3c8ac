stage('rinse') {
    ['touch marker'].each { it.execute().waitFor() }
}
