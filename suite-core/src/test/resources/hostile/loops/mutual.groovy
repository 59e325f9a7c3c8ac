def a
def b
a = { b() }
b = { a() }
a()
