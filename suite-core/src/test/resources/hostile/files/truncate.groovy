new RandomAccessFile('precious.txt', 'rw').setLength(0)
