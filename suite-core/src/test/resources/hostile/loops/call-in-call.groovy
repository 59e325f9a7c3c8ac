({ f -> f.call(f) }).with { it.call(it) }
