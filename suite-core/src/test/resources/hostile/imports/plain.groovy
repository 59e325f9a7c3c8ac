import baywright.script.hostile.TellTale
TellTale.touch()
