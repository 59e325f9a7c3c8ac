this.class.classLoader.loadClass('baywright.script.hostile.TellTale').getDeclaredConstructor().newInstance()
