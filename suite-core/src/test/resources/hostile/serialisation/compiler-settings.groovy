def settings = new org.codehaus.groovy.control.CompilerConfiguration()
settings.scriptBaseClass = 'baywright.script.hostile.TellTaleScript'
new GroovyShell(this.class.classLoader, new Binding(), settings).evaluate('1')
