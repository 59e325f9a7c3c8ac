// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('sealant') {
    title 'Synthetic sealant'
    about 'Protects with a synthetic sealant.'
    family 'protection'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'panel-wiped', 'dry', why: 'it does not bond to oil or water'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        refuses 'glazed', 'waxed', why: 'nothing bonds to fillers or wax'
        refuses 'sanded', why: 'sanding haze is not a finish; one step does not clear it'
        refuses 'masked', why: 'a tape line holds residue'
        prefers 'finish-checked', why: 'protection locks the defect in'
    }
    after {
        clears 'panel-wiped'
        sets 'sealed', 'curing'
        arrives 'water-safe', after: 240.min
    }
    time {
        setUp 3.min
        attended 0.8.min, 1.3.min, 2.4.min, per: 'm2'
        standing 10.min, why: 'hazes in 10 to 30 minutes before it is buffed'
    }
    uses {
        item 'sealant-liquid', 4.ml, per: 'm2'
        item 'short-pile-cloth', 0.3.each, per: 'm2'
    }
    crew {
        people 1
    }
    place {
        bay 'indoors'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Even, no streak'
        confirm 'Kept dry 4 to 12 hours'
        avoid 'Over oils'
    }
    example 'paint of a saloon', on: 'saloon',
            attended: 21.min..22.min, standing: 10.min..10.min,
            uses: ['sealant-liquid': 54.24.ml, 'short-pile-cloth': 4.068.each],
            sets: ['sealed', 'curing'], clears: ['panel-wiped']
    example 'medium van', on: 'medium-van',
            attended: 36.min..37.min, standing: 10.min..10.min,
            uses: ['sealant-liquid': 95.36.ml, 'short-pile-cloth': 7.152.each],
            sets: ['sealed', 'curing'], clears: ['panel-wiped']
}
