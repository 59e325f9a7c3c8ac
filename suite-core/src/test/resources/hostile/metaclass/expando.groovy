def loose = new Expando()
loose.go = { -> new File('marker').createNewFile() }
loose.go()
