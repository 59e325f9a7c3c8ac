def kept = [(new File('marker').createNewFile()): 1]
