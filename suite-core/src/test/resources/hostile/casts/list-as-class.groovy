[] as baywright.script.hostile.TellTale
