def make(a = new File('marker').createNewFile()) { a }
make()
