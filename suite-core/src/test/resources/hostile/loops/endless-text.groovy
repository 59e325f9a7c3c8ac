def all = [1]
all << [all]
all.hashCode()
