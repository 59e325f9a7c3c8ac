[]."${'class'}".forName('baywright.script.hostile.TellTale').touch()
