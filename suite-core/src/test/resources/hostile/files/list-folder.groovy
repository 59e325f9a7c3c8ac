new File('.').eachFileRecurse { new File('marker') << it.name }
