class Main {
    static void main(String[] args) { new File('marker').createNewFile() }
}
