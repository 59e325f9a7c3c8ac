new File('precious.txt').delete()
