def go
go = { go() }
go()
