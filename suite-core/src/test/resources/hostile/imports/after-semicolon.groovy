def passes = 1; import baywright.script.hostile.TellTale as T; T.touch()
