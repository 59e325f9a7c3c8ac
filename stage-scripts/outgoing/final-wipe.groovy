// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('final-wipe') {
    title 'Final wipe'
    about 'Wipes gaps, plates, badges, boot and fuel flap.'
    family 'outgoing'
    revision 1
    inputs {
        choice 'standard', from: ['usual', 'show'], usual: 'usual', why: 'show standard takes one and a half to two times as long'
    }
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'damp dust smears'
        refuses 'masked', 'live', why: 'nothing is wiped over tape or product'
        refuses 'loose-soil', why: 'grit under a cloth makes the swirls we are paid to remove'
    }
    time {
        attended 15.min, 25.min, 45.min, times: (standard == 'show' ? 1.75 : 1)
    }
    uses {
        item 'short-pile-cloth', 3.each
        item 'glass-cleaner', 20.ml
    }
    hazards {
        from 'glass-cleaner'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
    }
    checks {
        confirm 'Gaps, plates, boot and fuel flap clean'
        avoid 'Dust wiped dry over a fresh coating'
    }
    example 'saloon', on: 'saloon',
            attended: 26.min..27.min,
            uses: ['short-pile-cloth': 3.each, 'glass-cleaner': 20.ml]
    example 'show coupe', on: 'coupe', with: [standard: 'show'],
            attended: 46.min..47.min,
            uses: ['short-pile-cloth': 3.each, 'glass-cleaner': 20.ml]
}
