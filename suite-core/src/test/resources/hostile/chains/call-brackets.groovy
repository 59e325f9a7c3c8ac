def a = { it }
a«9000×(1)»
