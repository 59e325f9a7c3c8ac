def a = [a: 'aaaaaaaaaaaaaaaaaaaa', b: 'aaaaaaaaaaaaaaaaaaaa']
def b = [a: a, b: a, c: a, d: a, e: a, f: a, g: a, h: a]
def c = [a: b, b: b, c: b, d: b, e: b, f: b, g: b, h: b]
def d = [a: c, b: c, c: c, d: c, e: c, f: c, g: c, h: c]
def e = [a: d, b: d, c: d, d: d, e: d, f: d, g: d, h: d]
def f = [a: e, b: e, c: e, d: e, e: e, f: e, g: e, h: e]
def g = [a: f, b: f, c: f, d: f, e: f, f: f, g: f, h: f]
def h = [a: g, b: g, c: g, d: g, e: g, f: g, g: g, h: g]
stage('rinse') { title "$h" }
