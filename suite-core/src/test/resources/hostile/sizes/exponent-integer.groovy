def big = 1e300000000.toBigInteger()
