stage('rinse') {
    uses {
        item 'shampoo', 10, per: new File('marker').createNewFile()
    }
}
