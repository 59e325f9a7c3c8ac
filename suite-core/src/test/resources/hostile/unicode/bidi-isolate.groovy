stage('rinse') {
    title 'Rinse «U+2067»50 PBG rof«U+2069» free'
}
