System.exit(3)
