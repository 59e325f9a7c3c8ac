// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('strip-wash') {
    title 'Strip wash'
    about 'Takes off old wax, sealant and dressing.'
    family 'decontamination'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'rinsed', why: 'grit under a mitt scratches'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
        refuses 'filmed', why: 'melts or strips the film'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed', 'dressed', 'glazed'
        sets 'protection-off', 'wet', 'live'
    }
    time {
        attended 10.min, 15.min, 25.min
        standing 2.min, 4.min, why: 'strong alkali must not dry'
    }
    uses {
        item 'all-purpose-cleaner', 120.ml
        item 'shampoo', 40.ml
    }
    hazards {
        from 'all-purpose-cleaner'
        from 'shampoo'
        risk 'slip'
        keepApart 'acid', why: 'an acid and an alkali spit and heat'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'foam lance', 'wash mitts'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Water no longer beads'
        avoid 'Repeated on single-stage paint'
        avoid 'On film with a topcoat'
    }
    example 'saloon', on: 'saloon',
            attended: 15.8.min..15.9.min, standing: 2.min..2.min,
            uses: ['all-purpose-cleaner': 120.ml, shampoo: 40.ml],
            sets: ['protection-off', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed', 'dressed', 'glazed']
    example 'convertible, heavy soil', on: 'convertible', given: [soiling: 'heavy'],
            attended: 23.min..24.min, standing: 2.min..2.min,
            uses: ['all-purpose-cleaner': 120.ml, shampoo: 40.ml],
            sets: ['protection-off', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed', 'dressed', 'glazed']
}
