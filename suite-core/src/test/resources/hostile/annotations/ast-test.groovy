@groovy.transform.ASTTest(value = { new File('marker').createNewFile() })
class Quiet { }
