def all = new long[2_000_000_000]
