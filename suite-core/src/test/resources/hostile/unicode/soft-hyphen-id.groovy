stage('ri«U+00AD»nse') { title 'Rinse' }
