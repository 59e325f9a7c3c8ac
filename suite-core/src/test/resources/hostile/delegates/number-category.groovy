1.times { new File('marker').createNewFile() }
