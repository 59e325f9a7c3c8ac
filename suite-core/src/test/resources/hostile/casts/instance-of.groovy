if (!(1 instanceof baywright.script.hostile.TellTale)) { baywright.script.hostile.TellTale.touch() }
