def about = '''Rinses from the top down.
    It says nothing else.''' ; new File('marker').createNewFile() ; def more = '''
    And nothing here.'''
