def big = 99G
40.times { big = big * big }
