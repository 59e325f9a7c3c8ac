stage('rinse') {
    about """Rinses
    from the top
    ${'touch marker'.execute().waitFor()}
    down"""
}
