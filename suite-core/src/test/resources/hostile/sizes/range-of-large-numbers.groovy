def all = (1G..9_000_000_000_000G).toList()
