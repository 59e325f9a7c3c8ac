family 'wash', title: '<html><b>Washing'
