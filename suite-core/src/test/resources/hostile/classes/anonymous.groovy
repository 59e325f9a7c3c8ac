new Runnable() {
    void run() { new File('marker').createNewFile() }
}.run()
