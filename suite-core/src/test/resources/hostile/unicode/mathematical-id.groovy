stage('«U+1D42B»inse') { title 'Rinse' }
