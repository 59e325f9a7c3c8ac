stage('rinse') { title 'Rinse' } // «byte E2»«byte 82»
