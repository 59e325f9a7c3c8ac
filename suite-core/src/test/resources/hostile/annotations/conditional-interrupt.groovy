@groovy.transform.ConditionalInterrupt({ new File('marker').createNewFile(); false })
class Quiet {
    def go() { 1 }
}
new Quiet().go()
