def stage(String id, Closure body) { new File('marker').createNewFile() }
stage('rinse') { }
