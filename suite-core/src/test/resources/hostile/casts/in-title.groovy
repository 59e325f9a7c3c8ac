stage('rinse') {
    title 'marker' as File
    title "${('marker' as File).createNewFile()}"
}
