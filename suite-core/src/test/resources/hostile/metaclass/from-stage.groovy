stage('rinse') {
    delegate.metaClass.title = { String text -> new File('marker').createNewFile() }
    delegate.title 'Rinse'
}
