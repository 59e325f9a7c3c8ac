stage('rinse') {
    revision 3 +
    (new File('marker').createNewFile() ? 1 : 0)
}
