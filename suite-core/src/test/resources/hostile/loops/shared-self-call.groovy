again = { -> again() }
again()
