Class.forName('baywright.script.hostile.TellTale').touch()
