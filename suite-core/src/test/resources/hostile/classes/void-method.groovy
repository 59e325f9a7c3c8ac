void make() { new File('marker').createNewFile() }
make()
