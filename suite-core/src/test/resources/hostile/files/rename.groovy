new File('precious.txt').renameTo(new File('marker'))
