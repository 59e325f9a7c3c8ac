// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('leather-guard') {
    title 'Leather guard'
    about 'Guards clean leather.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'leather-clean', why: 'a guard over dirt locks it in'
        needs 'ventilated', why: 'vapour in a closed cabin'
    }
    after {
        sets 'cabin-guarded', 'curing'
        arrives 'water-safe', after: 60.min
    }
    time {
        attended 4.min, 6.min, 10.min, per: 'seat'
    }
    uses {
        item 'guard-liquid', 12.ml, per: 'seat'
        item 'short-pile-cloth', 0.5.each, per: 'seat'
    }
    hazards {
        from 'guard-liquid'
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
        confirm 'Dry to the touch'
        confirm 'Cures 1 to 12 hours'
        avoid 'Sat on within 1 hour'
    }
    example 'four seats', on: 'saloon',
            attended: 25.min..26.min,
            uses: ['guard-liquid': 48.ml, 'short-pile-cloth': 2.each],
            sets: ['cabin-guarded', 'curing']
    example 'coupe, three seats', on: 'coupe',
            attended: 19.min..19.min,
            uses: ['guard-liquid': 36.ml, 'short-pile-cloth': 1.5.each],
            sets: ['cabin-guarded', 'curing']
}
