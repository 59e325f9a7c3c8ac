shared = 'changed'
