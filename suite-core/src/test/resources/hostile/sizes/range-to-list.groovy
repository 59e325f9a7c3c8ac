def all = (1..2_000_000_000).toList()
