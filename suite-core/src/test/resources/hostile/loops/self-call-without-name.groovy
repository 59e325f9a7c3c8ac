def go = { f -> f(f) }
go(go)
