state 'dre«U+0301»ssed', means: 'dressed'
