'marker'.with(true) { new File(it).createNewFile() }
