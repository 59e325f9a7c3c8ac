/** Rinses. */ evaluate('new File("marker").createNewFile()')
