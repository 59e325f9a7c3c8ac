def go() { go() }
go()
