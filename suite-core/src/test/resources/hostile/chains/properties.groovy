def b = a«9000×.a»
