class Quiet {
    @Lazy def made = new File('marker').createNewFile()
}
new Quiet().made
