def go = { createNewFile() }
go.delegate = new File('marker')
go()
