import/* wash */baywright./* rinse */script.hostile.TellTale
TellTale.touch()
