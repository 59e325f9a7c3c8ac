state 'washed', means: '<html><b>approved'
