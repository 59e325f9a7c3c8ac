// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('fabric-guard') {
    title 'Fabric guard'
    about 'Guards dry fabric.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', 'fabric-dry', why: 'a guard over damp traps the water'
        needs 'ventilated', why: 'flammable vapour in a closed cabin'
    }
    after {
        sets 'cabin-guarded', 'curing'
        arrives 'water-safe', after: 240.min
    }
    time {
        attended 4.min, 6.min, 10.min, per: 'seat'
    }
    uses {
        item 'guard-liquid', 60.ml, per: 'seat'
    }
    hazards {
        from 'guard-liquid'
        risk 'ignition'
        risk 'harmful-air'
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
        confirm 'Beads, no tide mark'
        confirm 'Cures 4 to 24 hours'
        avoid 'On damp cloth'
    }
    example 'four seats', on: 'saloon',
            attended: 25.min..26.min,
            uses: ['guard-liquid': 240.ml],
            sets: ['cabin-guarded', 'curing']
    example 'front seats', on: 'saloon', zones: ['cabin-front'],
            attended: 12.6.min..12.7.min,
            uses: ['guard-liquid': 120.ml],
            sets: ['cabin-guarded', 'curing']
}
