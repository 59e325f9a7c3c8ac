stage('rin«U+FFFD»e') { title 'Rinse' }
