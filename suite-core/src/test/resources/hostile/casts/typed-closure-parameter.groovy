def go = { baywright.script.hostile.TellTale a = null -> baywright.script.hostile.TellTale.touch() }
go()
