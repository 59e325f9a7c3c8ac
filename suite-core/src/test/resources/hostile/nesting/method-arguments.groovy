stage('rinse') {
    title «2000×a.b(c: »1«2000×)»
}
