('java.io.File' as Class).newInstance('marker').createNewFile()
