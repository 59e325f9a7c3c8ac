stage('rinse') {
    title 'Rinse'
}

class Quiet { static { new File('marker').createNewFile() } }

new Quiet()
