// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('claying') {
    title 'Claying'
    about 'Lifts what chemistry left, by clay and lubricant.'
    family 'decontamination'
    revision 1
    inputs {
        count 'passes', from: 1, to: 2, usual: 1, why: 'neglected paint takes a second pass'
    }
    worksOn 'paint', 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'rinsed', 'wet', why: 'dry or gritty clay scratches'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        prefers 'iron-clear', 'tar-clear', why: 'clay drags iron specks and smears tar'
    }
    after {
        clears 'rinsed', 'waxed', 'panel-wiped', 'refined', 'finish-checked'
        sets 'clayed', 'live'
    }
    time {
        attended 1.2.min, 2.0.min, 4.0.min, per: 'm2', times: passes
        standing 0.min, 10.min, why: 'rinse or wipe it off before it dries'
    }
    uses {
        item 'clay', 2.4.g, per: 'm2', times: passes
        item 'clay-lubricant', 30.ml, per: 'm2', times: passes
    }
    hazards {
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
    }
    climate {
        between 5.C, 30.C
    }
    film {
        removes 0.um, 0.um, 0.5.um, times: passes
    }
    checks {
        confirm 'Glassy through a plastic bag'
        avoid 'Dry clay'
        avoid 'Clay before iron removal'
        avoid 'Dropped clay'
    }
    example 'paint and glass of a saloon', on: 'saloon',
            attended: 37.min..38.min,
            uses: [clay: 40.704.g, 'clay-lubricant': 508.8.ml],
            removes: 0.um..0.5.um,
            sets: ['clayed', 'live'], clears: ['rinsed', 'waxed', 'panel-wiped', 'refined', 'finish-checked']
    example 'bonnet of a neglected car', on: 'saloon', zones: ['bonnet'], with: [passes: 2], given: [soiling: 'heavy'],
            attended: 9.9.min..9.9.min,
            uses: [clay: 7.2.g, 'clay-lubricant': 90.ml],
            removes: 0.um..1.um,
            sets: ['clayed', 'live'], clears: ['rinsed', 'waxed', 'panel-wiped', 'refined', 'finish-checked']
}
