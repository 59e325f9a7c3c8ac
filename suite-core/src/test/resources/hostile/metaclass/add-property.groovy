Integer.metaClass.getMin = { -> new File('marker').createNewFile() }
5.min
