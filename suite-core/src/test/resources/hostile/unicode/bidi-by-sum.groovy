def turn = '\u202e'
stage('rinse') {
    title 'Rinse ' + turn + '50 PBG rof'
}
