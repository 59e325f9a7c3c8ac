stage('rinse') {
    title "${System.identityHashCode(new Object())}"
}
