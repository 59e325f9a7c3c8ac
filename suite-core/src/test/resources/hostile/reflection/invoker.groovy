org.codehaus.groovy.runtime.InvokerHelper.invokeConstructorOf('baywright.script.hostile.TellTale', null)
