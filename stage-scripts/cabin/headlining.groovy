// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('headlining') {
    title 'Headlining'
    about 'Cleans the headlining with little moisture.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', why: 'grit and dust turn to mud'
    }
    after {
        clears 'fabric-dry'
        sets 'fabric-damp'
    }
    time {
        attended 8.min, 12.min, 25.min, per: 'm2'
        standing 60.min, why: 'dries for 1 to 4 hours'
    }
    uses {
        item 'extraction-detergent', 10.ml, per: 'm2'
        item 'short-pile-cloth', 1.each, per: 'm2'
    }
    hazards {
        from 'extraction-detergent'
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
        confirm 'No tide mark, no sag'
        avoid 'Soaked: the glue lets go'
    }
    example 'saloon', on: 'saloon',
            attended: 18.9.min..18.9.min, standing: 60.min..60.min,
            uses: ['extraction-detergent': 14.ml, 'short-pile-cloth': 1.4.each],
            sets: ['fabric-damp'], clears: ['fabric-dry']
    example 'smoke in a small car', on: 'small-five-door', given: ['cabin-soiling': 'pets-or-smoke'],
            attended: 31.min..32.min, standing: 60.min..60.min,
            uses: ['extraction-detergent': 13.ml, 'short-pile-cloth': 1.3.each],
            sets: ['fabric-damp'], clears: ['fabric-dry']
}
