File.constructors.find { it.parameterCount == 1 && it.parameterTypes[0] == String }.newInstance('marker').createNewFile()
