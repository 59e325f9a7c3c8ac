stage('rinse') {
    if (Boolean.getBoolean('hostile.flag')) { title 'the-secret-phrase' }
}
