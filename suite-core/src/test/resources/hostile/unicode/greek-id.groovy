state 'rinsed-«U+03BF»ff', means: 'rinsed off'
