def meta = new ExpandoMetaClass(String, true)
meta.length = { -> new File('marker').createNewFile(); 0 }
meta.initialize()
GroovySystem.metaClassRegistry.setMetaClass(String, meta)
'a'.length()
