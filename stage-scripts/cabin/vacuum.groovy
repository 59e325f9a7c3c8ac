// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('vacuum') {
    title 'Empty and vacuum'
    about 'Empties, bags what is found, and vacuums.'
    family 'cabin'
    revision 1
    inputs {
        choice 'depth', from: ['full', 'half'], usual: 'full', why: 'half: floor and seats only, half the time'
    }
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
    }
    after {
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'vacuumed'
    }
    time {
        attended 15.min, 25.min, 60.min, times: (depth == 'half' ? 0.5 : 1)
    }
    uses {
        item 'ppe-allowance', 0.1.each
    }
    hazards {
        risk 'biological'
        risk 'blades'
        risk 'noise', 85.dB
        wear 'gloves'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        equipment 'vacuum cleaner', 'air tool'
    }
    climate {
        between 15.C, 35.C
    }
    checks {
        confirm 'Mats out, rails clean'
        avoid 'Sharps by hand'
        avoid 'Finds not bagged'
    }
    example 'saloon', on: 'saloon',
            attended: 29.min..30.min,
            uses: ['ppe-allowance': 0.1.each],
            sets: ['vacuumed'], clears: ['panel-wiped', 'finish-checked']
    example 'van at half depth', on: 'medium-van', with: [depth: 'half'],
            attended: 18.9.min..19.min,
            uses: ['ppe-allowance': 0.13.each],
            sets: ['vacuumed'], clears: ['panel-wiped', 'finish-checked']
    example 'saloon with dog hair', on: 'saloon', given: ['cabin-soiling': 'pets-or-smoke'],
            attended: 52.min..53.min,
            uses: ['ppe-allowance': 0.1.each],
            sets: ['vacuumed'], clears: ['panel-wiped', 'finish-checked']
}
