«500000×state 'wet', means: 'wet'
»
