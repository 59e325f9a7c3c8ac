// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('cabin-surfaces') {
    title 'Cabin surfaces'
    about 'Cleans hard surfaces and vents, by steam where it helps.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', why: 'grit and dust turn to mud'
    }
    after {
        clears 'glass-clean'
        sets 'cabin-clean'
    }
    time {
        attended 20.min, 35.min, 65.min
    }
    uses {
        item 'all-purpose-cleaner', 60.ml
        item 'short-pile-cloth', 4.each
    }
    hazards {
        from 'all-purpose-cleaner'
        risk 'heat'
        risk 'electricity'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        equipment 'steamer', 'soft brushes'
    }
    climate {
        between 15.C, 35.C
    }
    checks {
        confirm 'No residue in the seams'
        avoid 'Steam on screens or airbag seams'
    }
    example 'saloon', on: 'saloon',
            attended: 37.min..38.min,
            uses: ['all-purpose-cleaner': 60.ml, 'short-pile-cloth': 4.each],
            sets: ['cabin-clean'], clears: ['glass-clean']
    example 'estate with dog hair', on: 'estate', given: ['cabin-soiling': 'pets-or-smoke'],
            attended: 74.min..75.min,
            uses: ['all-purpose-cleaner': 66.ml, 'short-pile-cloth': 4.4.each],
            sets: ['cabin-clean'], clears: ['glass-clean']
}
