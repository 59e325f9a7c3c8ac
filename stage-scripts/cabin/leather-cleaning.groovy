// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('leather-cleaning') {
    title 'Leather cleaning'
    about 'Cleans finished leather.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', why: 'grit and dust turn to mud'
    }
    after {
        sets 'leather-clean'
    }
    time {
        attended 8.min, 14.min, 25.min, per: 'seat'
    }
    uses {
        item 'leather-cleaner', 25.ml, per: 'seat'
        item 'short-pile-cloth', 1.each, per: 'seat'
    }
    hazards {
        from 'leather-cleaner'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        equipment 'soft brush'
    }
    climate {
        between 15.C, 35.C
    }
    checks {
        confirm 'Matt, no dye on the cloth'
        avoid 'Unfinished leather wetted'
    }
    example 'four seats', on: 'saloon',
            attended: 59.min..60.min,
            uses: ['leather-cleaner': 100.ml, 'short-pile-cloth': 4.each],
            sets: ['leather-clean']
    example 'coupe, three seats', on: 'coupe',
            attended: 44.min..45.min,
            uses: ['leather-cleaner': 75.ml, 'short-pile-cloth': 3.each],
            sets: ['leather-clean']
}
