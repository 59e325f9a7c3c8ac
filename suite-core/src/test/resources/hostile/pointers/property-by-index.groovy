def kind = 'a'['class']
kind.class.forName('baywright.script.hostile.TellTale').touch()
