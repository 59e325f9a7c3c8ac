'evaluate' "new File('marker').createNewFile()"
