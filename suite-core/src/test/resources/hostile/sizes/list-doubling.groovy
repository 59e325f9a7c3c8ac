def all = [0]
for (i in 1..60) { all = all + all }
