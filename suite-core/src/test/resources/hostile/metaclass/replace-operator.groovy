Integer.metaClass.plus = { Integer more -> new File('marker').createNewFile(); 0 }
def one = 1
one + 1
