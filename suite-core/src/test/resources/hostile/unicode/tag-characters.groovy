stage('rinse') {
    title 'Rinse«U+E0049»«U+E0067»«U+E006E»«U+E006F»«U+E0072»«U+E0065»'
}
