(1..4).toList().parallelStream().forEach { new File('marker').createNewFile() }
