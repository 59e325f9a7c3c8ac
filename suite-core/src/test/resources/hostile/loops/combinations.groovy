([(1..10).toList()] * 10).combinations()
