new File('marker').text = 'written'
