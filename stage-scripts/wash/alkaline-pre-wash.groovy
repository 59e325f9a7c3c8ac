// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('alkaline-pre-wash') {
    title 'Alkaline pre-wash'
    about 'Loosens traffic film on the lower half.'
    family 'wash'
    revision 1
    worksOn 'paint', 'wheel', 'arch'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'dressed'
        sets 'wet', 'live'
    }
    time {
        attended 3.min, 4.min, 7.min
        standing 2.min, 5.min, why: 'too short does nothing, too long stains'
    }
    uses {
        item 'alkaline-pre-wash-liquid', 25.ml      // concentrate for 1:20 to 1:50
    }
    hazards {
        from 'alkaline-pre-wash-liquid'
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
        equipment 'sprayer'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Rinses clear before it dries'
        avoid 'Too strong on fresh wax or bare metal'
    }
    example 'saloon', on: 'saloon',
            attended: 4.3.min..4.4.min, standing: 2.min..2.min,
            uses: ['alkaline-pre-wash-liquid': 25.ml],
            sets: ['wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'dressed']
    example 'medium van takes size into both', on: 'medium-van',
            attended: 5.6.min..5.7.min, standing: 2.min..2.min,
            uses: ['alkaline-pre-wash-liquid': 32.5.ml],
            sets: ['wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'dressed']
}
