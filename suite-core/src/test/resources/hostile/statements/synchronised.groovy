synchronized (this) { new File('marker').createNewFile() }
