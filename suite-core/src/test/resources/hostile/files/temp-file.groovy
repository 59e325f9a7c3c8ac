File.createTempFile('marker', '', new File('.')).renameTo(new File('marker'))
