stage('rinse') {
    title(([delegate]*.@hostSecret)[0])
}
