def text = 'a'.padLeft(2_000_000_000)
