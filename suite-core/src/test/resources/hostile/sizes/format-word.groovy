def text = sprintf('%2000000000s', 'a')
