def text = 'a'.center(2_000_000_000)
