stage('ri«U+200B»nse') { title 'Rinse' }
