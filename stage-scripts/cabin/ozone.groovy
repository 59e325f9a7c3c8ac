// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('ozone') {
    title 'Ozone treatment'
    about 'Runs ozone in the closed, empty car, then airs it.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', 'cabin-clean', why: 'it works on what is left, not on dirt'
        refuses 'fabric-damp', why: 'damp fabric holds the gas and the mould'
    }
    after {
        sets 'odour-treated'
        arrives 'aired', after: 75.min
    }
    time {
        attended 10.min, 15.min, 20.min
        standing 75.min, why: 'runs 30 to 60 minutes, then airs 45 minutes or more'
    }
    uses {
        item 'ppe-allowance', 0.1.each
    }
    hazards {
        risk 'harmful-air'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        bay 'isolated'
        equipment 'ozone generator', 'warning sign'
    }
    checks {
        confirm 'Meter or timer clear'
        confirm 'Aired'
        avoid 'Occupied car'
        avoid 'Wet fabric'
        avoid 'Rubber aged by long runs'
    }
    example 'saloon', on: 'saloon',
            attended: 15.min..15.min, standing: 75.min..75.min,
            uses: ['ppe-allowance': 0.1.each],
            sets: ['odour-treated']
    example 'van', on: 'medium-van',
            attended: 19.5.min..19.5.min, standing: 75.min..75.min,
            uses: ['ppe-allowance': 0.13.each],
            sets: ['odour-treated']
}
