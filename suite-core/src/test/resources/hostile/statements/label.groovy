title: new File('marker').createNewFile()
