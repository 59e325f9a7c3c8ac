// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('snow-foam') {
    title 'Snow foam'
    about 'Lifts grit untouched under a clinging foam.'
    family 'wash'
    revision 1
    worksOn 'paint', 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'rinsed'
        sets 'wet', 'live'
    }
    time {
        attended 3.min, 4.min, 6.min
        standing 4.min, 8.min, why: 'foam must carry the dirt down and not dry'
    }
    uses {
        item 'snow-foam', 1100.ml, diluted: '1:10'      // ready mix: 100 ml of concentrate
    }
    hazards {
        from 'snow-foam'
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'foam lance'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Foam carries dirt down, none dried'
        avoid 'Hot panel'
        avoid 'Left to dry'
    }
    example 'saloon', on: 'saloon',
            attended: 4.1.min..4.2.min, standing: 4.min..4.min,
            uses: ['snow-foam': 100.ml],
            sets: ['wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed']
    example 'estate', on: 'estate',
            attended: 4.5.min..4.6.min, standing: 4.min..4.min,
            uses: ['snow-foam': 110.ml],
            sets: ['wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed']
}
