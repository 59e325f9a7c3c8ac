def make() { new File('marker').createNewFile() }
make()
