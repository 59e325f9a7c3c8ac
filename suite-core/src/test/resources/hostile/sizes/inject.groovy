def text = (1..60).inject('aaaaaaaaaaaaaaaa') { sum, i -> sum + sum }
