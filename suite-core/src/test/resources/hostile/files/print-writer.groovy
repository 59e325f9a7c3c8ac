new PrintWriter('marker').close()
