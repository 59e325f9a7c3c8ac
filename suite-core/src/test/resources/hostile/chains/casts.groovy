def a = «9000×(int)»1
