class Quiet {
    { new File('marker').createNewFile() }
}
new Quiet()
