class Outer {
    static class Inner { Inner() { new File('marker').createNewFile() } }
}
new Outer.Inner()
