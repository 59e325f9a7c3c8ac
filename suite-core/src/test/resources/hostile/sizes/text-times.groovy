def text = 'a' * 2_000_000_000
