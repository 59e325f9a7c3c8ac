stage('rinse') {
    title 'Rinse «U+202E»50 PBG rof«U+202C» free'
}
