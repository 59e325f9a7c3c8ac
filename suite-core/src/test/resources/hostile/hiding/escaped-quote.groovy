def about = 'rinses\\'; new File('marker').createNewFile(); def more = '\\'
