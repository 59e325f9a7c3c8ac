// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('fabric-extraction') {
    title 'Fabric extraction'
    about 'Extracts seats and carpet by spray and suction.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'vacuumed', why: 'grit and dust turn to mud'
    }
    after {
        clears 'fabric-dry', 'glass-clean'
        sets 'fabric-damp'
    }
    time {
        setUp 8.min
        attended 10.min, 16.min, 30.min, per: 'seat'
        standing 3.min, why: 'the detergent works 3 to 8 minutes and is extracted inside the stage'
    }
    uses {
        item 'extraction-detergent', 1085.ml, per: 'seat', diluted: '1:30'      // ready mix, about a litre a seat
        item 'ppe-allowance', 0.02.each, per: 'seat'
    }
    hazards {
        from 'extraction-detergent'
        risk 'electricity'
        risk 'biological'
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        equipment 'extractor'
    }
    climate {
        between 15.C, 35.C
    }
    checks {
        confirm 'Clear water comes out'
        confirm 'Damp, not wet'
        avoid 'Soaking the foam'
        avoid 'No dry-out booked'
    }
    example 'four seats', on: 'saloon',
            attended: 77.min..78.min, standing: 3.min..3.min,
            uses: ['extraction-detergent': 140.ml, 'ppe-allowance': 0.08.each],
            sets: ['fabric-damp'], clears: ['fabric-dry', 'glass-clean']
    example 'front seats, heavy soil', on: 'saloon', zones: ['cabin-front'], given: ['cabin-soiling': 'heavy'],
            attended: 60.min..60.min, standing: 3.min..3.min,
            uses: ['extraction-detergent': 70.ml, 'ppe-allowance': 0.04.each],
            sets: ['fabric-damp'], clears: ['fabric-dry', 'glass-clean']
}
