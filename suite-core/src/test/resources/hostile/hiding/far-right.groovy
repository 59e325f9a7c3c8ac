stage('rinse') { title 'Rinse' }«3000× »; new File('marker').createNewFile()
