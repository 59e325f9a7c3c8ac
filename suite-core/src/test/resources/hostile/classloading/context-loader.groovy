Thread.currentThread().contextClassLoader.loadClass('baywright.script.hostile.TellTale').touch()
