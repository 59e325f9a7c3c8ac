class Quiet {
    static { new File('marker').createNewFile() }
    static go() { }
}
Quiet.go()
