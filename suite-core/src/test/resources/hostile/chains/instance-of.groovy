def b = a«9000× in c»
