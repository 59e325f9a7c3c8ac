def all = (0.5..9_000_000_000.5).toList()
