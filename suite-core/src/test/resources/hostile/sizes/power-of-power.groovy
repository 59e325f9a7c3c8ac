def big = 9 ** (9 ** 9)
