def go = { new File(it).createNewFile() } << { 'marker' }
go()
