@groovy.transform.ASTTest(value = { new File('marker').createNewFile() })
def passes = 1
