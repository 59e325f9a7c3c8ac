System.in.read()
