class Loud {
    static shout(String text) { new File('marker').createNewFile() }
}
use(Loud) { 'a'.shout() }
