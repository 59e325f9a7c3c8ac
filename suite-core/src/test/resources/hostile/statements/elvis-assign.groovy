def a = null
a ?= new File('marker').createNewFile()
