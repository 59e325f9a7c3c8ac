def go = (a) -> new File(a).createNewFile()
go('marker')
