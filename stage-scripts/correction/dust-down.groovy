// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('dust-down') {
    title 'Dust-down'
    about 'Blows and wipes dust from the gaps; not in the clean bay.'
    family 'correction'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'damp dust smears'
        refuses 'loose-soil', why: 'grit under a cloth makes the swirls we are paid to remove'
    }
    after {
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        clears 'dusty'
    }
    time {
        setUp 2.min
        attended 8.min, 12.min, 20.min
        standing 15.min, why: 'dust settles for 15 to 30 minutes'
    }
    uses {
        item 'short-pile-cloth', 3.each
        item 'ppe-allowance', 0.1.each
    }
    hazards {
        risk 'noise', 90.dB
        risk 'dust'
        wear 'ear defenders', 'dust mask'
    }
    crew {
        people 1
    }
    place {
        equipment 'air line'
    }
    checks {
        confirm 'Tissue from the gaps stays white'
        avoid 'Done in the clean bay'
    }
    example 'saloon', on: 'saloon', zones: ['surface:paint'],
            attended: 14.6.min..14.7.min, standing: 15.min..15.min,
            uses: ['short-pile-cloth': 3.each, 'ppe-allowance': 0.1.each],
            clears: ['panel-wiped', 'finish-checked', 'dusty']
    example 'large off-road-style car', on: 'large-off-road', zones: ['surface:paint'],
            attended: 17.2.min..17.2.min, standing: 15.min..15.min,
            uses: ['short-pile-cloth': 3.6.each, 'ppe-allowance': 0.12.each],
            clears: ['panel-wiped', 'finish-checked', 'dusty']
}
