this.metaClass.propertyMissing = { String name -> new File('marker').createNewFile() }
unknown
