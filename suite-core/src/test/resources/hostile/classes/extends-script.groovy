class Mine extends Script {
    def run() { new File('marker').createNewFile() }
}
