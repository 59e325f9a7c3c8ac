def kept = [title: baywright.script.hostile.TellTale]
kept.title.touch()
