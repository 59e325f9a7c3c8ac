stage('rinse') {
    def loader = { -> }.getClass().classLoader
    loader.loadClass('baywright.script.hostile.TellTale').touch()
}
