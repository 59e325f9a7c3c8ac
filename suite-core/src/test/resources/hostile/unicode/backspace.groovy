stage('rinse') {
    title 'not approved\b\b\b\b\b\b\b\b\b\b\b\bapproved'
}
