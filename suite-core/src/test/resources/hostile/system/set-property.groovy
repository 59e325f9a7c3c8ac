System.setProperty('hostile.changed', 'yes')
