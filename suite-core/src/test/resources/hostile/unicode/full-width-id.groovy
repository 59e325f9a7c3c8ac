stage('«U+FF52»inse') { title 'Rinse' }
