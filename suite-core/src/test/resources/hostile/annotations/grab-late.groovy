groovy.grape.Grape.grab(group: 'far', module: 'away-late', version: '1')
