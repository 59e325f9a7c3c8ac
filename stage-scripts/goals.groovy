// Ends that customers ask for by name. A job names them in "goals", narrows them down to zones and says whether they
// must, should or could be; `plan compose` finds the stages. A goal on a surface that a vehicle has not asks for nothing
// there. What protects for how long is common practice, no source: tune the words to what you put your name to.

goal('maintenance-wash') {
    title 'Maintenance wash'
    about 'Outside washed by hand and dried'
    wants 'washed', 'dry', on: ['paint', 'glass', 'wheel', 'trim', 'lamp', 'bright-metal']
}

goal('interior-clean') {
    title 'Interior clean'
    about 'Cabin emptied, vacuumed and wiped down, glass clean inside and out'
    wants 'vacuumed', 'cabin-clean', on: ['cabin']
    wants 'glass-clean', on: ['glass']
}

goal('one-step-finish') {
    title 'One-step finish'
    about 'Light swirls taken out in one pass, looked at under lights'
    wants 'polished', 'finish-checked', on: ['paint']
}

goal('full-correction') {
    title 'Full correction'
    about 'Polished and refined to last gloss, looked at under lights'
    wants 'polished', 'refined', 'finish-checked', on: ['paint']
}

goal('two-year-protection') {
    title 'Two-year protection'
    about 'A ceramic coating on the paint'
    wants 'coated', on: ['paint']
}

goal('season-protection') {
    title 'Protection for a season'
    about 'A synthetic sealant on the paint'
    wants 'sealed', on: ['paint']
}

goal('wheels-clean') {
    title 'Wheels and tyres'
    about 'Wheels clean, tyres dressed'
    wants 'washed', 'dressed', on: ['wheel']
}

goal('wheels-protected') {
    title 'Wheels protected'
    about 'A coating on the wheels, from which brake dust rinses off'
    wants 'washed', 'coated', on: ['wheel']
}

goal('glass-clear') {
    title 'Glass clear'
    about 'Glass clean inside and out'
    wants 'glass-clean', on: ['glass']
}

goal('lamps-clear') {
    title 'Lamps clear'
    about 'Dull headlamps brought back and guarded against the sun'
    wants 'coated', on: ['lamp']
}

goal('trim-restored') {
    title 'Trim restored'
    about 'Faded plastic brought back to its colour'
    wants 'dressed', on: ['trim']
}

goal('engine-bay-clean') {
    title 'Engine bay clean'
    about 'Engine bay washed and dressed'
    wants 'washed', 'dressed', on: ['engine-bay']
}

goal('show-preparation') {
    title 'Show preparation'
    about 'Last gloss under wax, bright metal polished, wheels, glass and cabin as new'
    wants 'refined', 'finish-checked', 'waxed', on: ['paint']
    wants 'polished', on: ['bright-metal']
    wants 'washed', 'dressed', on: ['wheel']
    wants 'glass-clean', on: ['glass']
    wants 'vacuumed', 'cabin-clean', on: ['cabin']
}

goal('hand-over') {
    title 'Handed over'
    about 'Passed by a second person and handed over with the aftercare card'
    wants 'handed-over', on: ['vehicle']
}
