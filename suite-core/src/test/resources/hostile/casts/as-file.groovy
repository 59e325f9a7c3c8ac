('marker' as File).createNewFile()
