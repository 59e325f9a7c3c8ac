def host = Thread.currentThread().stackTrace*.className.find { it.endsWith('DangerChild') }
stage('rinse') {
    title "the-secret-phrase: $host"
}
