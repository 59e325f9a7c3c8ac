1.getClass().forName('baywright.script.hostile.TellTale').touch()
