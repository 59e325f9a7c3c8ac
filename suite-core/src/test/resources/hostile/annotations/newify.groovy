@Newify(File)
def make() { File('marker').createNewFile() }
make()
