def go = { @baywright.script.hostile.TellTaleMark String a -> a }
