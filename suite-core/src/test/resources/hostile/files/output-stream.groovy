new FileOutputStream('marker').close()
