@Singleton
class Quiet {
    { new File('marker').createNewFile() }
}
Quiet.instance
