(1..30).toList().subsequences()
