def go
go = { a -> go.trampoline(a) }.trampoline()
go(1)
