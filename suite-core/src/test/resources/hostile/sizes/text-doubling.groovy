def text = 'aaaaaaaaaaaaaaaa'
for (i in 1..60) { text = text + text }
