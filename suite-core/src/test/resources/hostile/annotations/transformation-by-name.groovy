@baywright.script.hostile.TellTaleMark
def passes = 1
