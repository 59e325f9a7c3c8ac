'marker'.asType(File).createNewFile()
