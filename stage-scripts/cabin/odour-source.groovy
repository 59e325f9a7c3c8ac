// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('odour-source') {
    title 'Odour source treatment'
    about 'Finds the source of a smell and treats it with enzymes.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', why: 'grit and dust turn to mud'
    }
    after {
        clears 'fabric-dry'
        sets 'fabric-damp', 'odour-treated'
    }
    time {
        attended 15.min, 25.min, 45.min
        standing 30.min, 480.min, why: 'the enzymes work 30 minutes to 8 hours'
    }
    uses {
        item 'enzyme-treatment', 500.ml
    }
    hazards {
        from 'enzyme-treatment'
        risk 'biological'
        wear 'gloves'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    climate {
        between 15.C, 35.C
    }
    checks {
        confirm 'Source found and treated'
        avoid 'Masking scent instead'
        avoid 'Heat above 50 °C, it kills the enzymes'
    }
    example 'saloon', on: 'saloon',
            attended: 26.min..27.min, standing: 30.min..30.min,
            uses: ['enzyme-treatment': 500.ml],
            sets: ['fabric-damp', 'odour-treated'], clears: ['fabric-dry']
    example 'estate', on: 'estate',
            attended: 29.min..30.min, standing: 30.min..30.min,
            uses: ['enzyme-treatment': 550.ml],
            sets: ['fabric-damp', 'odour-treated'], clears: ['fabric-dry']
}
