stage('rinse') {
    print 'no problems'
}
