new File('marker') << 'written'
