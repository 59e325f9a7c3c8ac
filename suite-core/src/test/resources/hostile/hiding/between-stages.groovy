stage('rinse') {
    title 'Rinse'
}
«300×
»new File('marker').createNewFile()
«300×
»stage('wash') {
    title 'Wash'
}
