def a = 7 ** 99
def b = a ** 99
def c = b ** 99
def d = c ** 99
def e = d ** 99
