File made = ['marker']
made.createNewFile()
