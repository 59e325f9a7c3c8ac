stage('iron«U+2011»removal') { title 'Iron removal' }
