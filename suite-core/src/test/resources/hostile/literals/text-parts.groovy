def b = 1
def a = "«1000000×$b »"
