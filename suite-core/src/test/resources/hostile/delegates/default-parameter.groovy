def go = { a = new File('marker').createNewFile() -> a }
go()
