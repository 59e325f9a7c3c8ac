// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('blow-out-and-stand') {
    title 'Blow out seams and stand'
    about 'Blows water from mirrors, lamps, badges and shuts and lets the rest run out.'
    family 'drying'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'open surfaces first, or it is blown about'
    }
    after {
        clears 'panel-wiped', reach: 'vehicle'
        arrives 'seams-dry', after: 20.min
    }
    time {
        attended 6.min, 10.min, 18.min
        standing 20.min, why: 'seams weep for 20 to 60 minutes'
    }
    uses {
        item 'drying-towel', 0.003.each
    }
    hazards {
        risk 'noise', 90.dB
        risk 'electricity'
        wear 'ear defenders'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'indoors'
        equipment 'filtered warm blower'
    }
    checks {
        confirm 'No weep from mirrors after 20 minutes'
        avoid 'Taped or coated while seams weep'
    }
    example 'saloon', on: 'saloon',
            attended: 10.6.min..10.7.min, standing: 20.min..20.min,
            uses: ['drying-towel': 0.003.each],
            clears: ['panel-wiped']
    example 'estate', on: 'estate',
            attended: 11.7.min..11.8.min, standing: 20.min..20.min,
            uses: ['drying-towel': 0.0033.each],
            clears: ['panel-wiped']
}
