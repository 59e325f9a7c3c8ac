baywright.script.hostile.TellTale.touch()
