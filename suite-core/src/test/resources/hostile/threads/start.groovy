Thread.start { new File('marker').createNewFile() }.join()
