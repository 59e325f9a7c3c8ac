return new File('marker').createNewFile()
