new baywright.script.hostile.TellTale()
