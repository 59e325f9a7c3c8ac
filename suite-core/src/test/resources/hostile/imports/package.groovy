package baywright.script.hostile
TellTale.touch()
