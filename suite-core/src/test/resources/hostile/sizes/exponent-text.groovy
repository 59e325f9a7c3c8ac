def text = 1e999999999.toPlainString()
