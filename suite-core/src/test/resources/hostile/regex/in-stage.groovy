stage('rinse') {
    if ('«80×a»!' ==~ /(a|aa)+\1?c/) { title 'Rinse' } else { title 'Wash' }
}
