// A type-checking extension: it is run while a script that names it is compiled.
baywright.script.hostile.TellTale.touch()
