stage('w«U+0430»sh') { title 'Wash' }
