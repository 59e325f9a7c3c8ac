((File) ['marker']).createNewFile()
