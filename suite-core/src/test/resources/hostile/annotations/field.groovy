@groovy.transform.Field def made = new File('marker').createNewFile()
