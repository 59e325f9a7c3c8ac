// rinses only«U+000D»new File('marker').createNewFile()
