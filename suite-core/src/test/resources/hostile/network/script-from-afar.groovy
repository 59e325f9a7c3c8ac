new GroovyShell().evaluate(URI.create('http://127.0.0.1:«port»/far.groovy'))
