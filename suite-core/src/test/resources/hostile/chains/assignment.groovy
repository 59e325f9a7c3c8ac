def a
a = «6000×a = »1
