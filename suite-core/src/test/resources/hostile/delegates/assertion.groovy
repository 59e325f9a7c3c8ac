assert new File('marker').createNewFile()
