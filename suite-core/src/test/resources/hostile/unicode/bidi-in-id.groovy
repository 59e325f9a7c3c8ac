stage('rinse«U+200E»') { title 'Rinse' }
