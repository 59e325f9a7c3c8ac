def a = 'aaaaaaaaaaaaaaaa'
def b = a.replace('a', a)
def c = b.replace('a', b)
def d = c.replace('a', c)
def e = d.replace('a', d)
