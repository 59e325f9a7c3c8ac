baywright.script.hostile.TellTale made = [:]
