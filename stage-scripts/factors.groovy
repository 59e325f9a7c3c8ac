// Job factors. Figures: from memory, tune to your own records. They multiply hands-on minutes, never set-ups or waits;
// only size touches items as well.
factor('size') {
    reads 'size'
    onlyPer 'vehicle'
    items()
}
factor('hardness') {
    reads 'hardness'
    value 'soft', 0.85
    value 'soft-to-medium', 0.9
    value 'medium-to-hard', 1.15
    value 'hard', 1.3
    stages 'trial-section', 'spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish'
}
// soft paint cuts quickly and finishes slowly
factor('hardness-at-the-finish') {
    reads 'hardness'
    value 'soft', 1.2
    value 'soft-to-medium', 0.9
    value 'medium-to-hard', 1.15
    value 'hard', 1.3
    stages 'finishing-polish'
}
factor('soiling') {
    reads 'soiling'
    value 'light', 0.8
    value 'heavy', 1.5
    families 'wash', 'wheels', 'decontamination'
}
factor('cabin-soiling') {
    reads 'cabin-soiling'
    value 'light', 0.8
    value 'heavy', 1.5
    value 'pets-or-smoke', 1.8
    families 'cabin'
}
factor('colour') {
    reads 'colour'
    value 'light', 0.85
    value 'dark', 1.25
    stages 'finishing-polish', 'finish-check'
}
factor('access') {
    reads 'access'
    value 'vents', 1.2
    value 'brightwork', 1.25
}
factor('person') {
    reads 'person'
    value 'senior', 0.9
    value 'learner', 1.6
}
