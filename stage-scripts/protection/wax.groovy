// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('wax') {
    title 'Wax'
    about 'Protects with wax, coat by coat.'
    family 'protection'
    revision 1
    inputs {
        count 'coats', from: 1, to: 3, usual: 1, why: 'a second coat evens out the first'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'grit under the applicator scratches'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        refuses 'dusty', why: 'dust under the applicator scratches'
        refuses 'coated', why: 'wax on a coating hides it and does not last'
        refuses 'sanded', why: 'sanding haze is not a finish; one step does not clear it'
        refuses 'masked', why: 'a tape line holds wax and dust'
        prefers 'finish-checked', why: 'protection locks the defect in'
    }
    after {
        clears 'panel-wiped'
        sets 'waxed', 'curing'
        arrives 'water-safe', after: 60.min
    }
    time {
        setUp 3.min
        attended 1.0.min, 1.6.min, 3.0.min, per: 'm2', times: coats
        standing 5.min, why: 'hazes in 5 to 20 minutes before it is buffed'
    }
    uses {
        item 'wax-paste', 1.g, per: 'm2', times: coats
        item 'short-pile-cloth', 0.3.each, per: 'm2', times: coats
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
        confirm 'No residue in the badges'
        confirm 'Kept dry 1 to 12 hours'
        avoid 'Thick coat'
        avoid 'Hot panel'
    }
    example 'paint of a saloon', on: 'saloon',
            attended: 26.min..27.min, standing: 5.min..5.min,
            uses: ['wax-paste': 13.56.g, 'short-pile-cloth': 4.068.each],
            sets: ['waxed', 'curing'], clears: ['panel-wiped']
    example 'coupe, two coats', on: 'coupe', with: [coats: 2],
            attended: 45.min..46.min, standing: 5.min..5.min,
            uses: ['wax-paste': 24.52.g, 'short-pile-cloth': 7.356.each],
            sets: ['waxed', 'curing'], clears: ['panel-wiped']
}
