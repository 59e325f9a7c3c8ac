@groovy.transform.BaseScript baywright.script.hostile.TellTaleScript base
