new GroovyClassLoader().parseClass("new File('marker').createNewFile()").getDeclaredConstructor().newInstance().run()
