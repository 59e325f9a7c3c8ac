stage('rinse') {
    title 'Rinse'
    inputs { choice 'load', from: ['<html>light', 'heavy'], usual: 'heavy' }
}
