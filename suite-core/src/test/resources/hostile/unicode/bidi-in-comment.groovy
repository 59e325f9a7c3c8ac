/*«U+202E» } «U+2066»if (approved)«U+2069» «U+2066» begin rinse only */
stage('rinse') { title 'Rinse' }
