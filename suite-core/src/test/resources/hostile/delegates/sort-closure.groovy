[2, 1].sort { new File('marker').createNewFile(); it }
