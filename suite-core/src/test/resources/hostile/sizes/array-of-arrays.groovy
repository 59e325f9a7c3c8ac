def all = new int[40_000][40_000]
