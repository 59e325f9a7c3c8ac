this.metaClass.methodMissing = { String name, args -> new File('marker').createNewFile() }
unknown 'word'
