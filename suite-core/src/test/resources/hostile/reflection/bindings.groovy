def all = binding.variables.values().join(' ')
stage('rinse') {
    title all
}
