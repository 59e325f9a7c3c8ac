//*
new File('marker').createNewFile()
/*/
def passes = 1
//*/
