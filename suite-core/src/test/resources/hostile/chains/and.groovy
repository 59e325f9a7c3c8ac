def a = true«7000× && true»
