@groovy.transform.TypeChecked(extensions = 'hostile-support/tell-tale-extension.groovy')
def make() { 1 }
make()
