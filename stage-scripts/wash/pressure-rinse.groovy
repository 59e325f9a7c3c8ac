// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('pressure-rinse') {
    title 'Pressure rinse'
    about 'Knocks off grit without touching, and rinses chemistry away.'
    family 'wash'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'live', 'dusty'
        clears 'panel-wiped', reach: 'neighbours'
        sets 'wet', 'rinsed'
    }
    time {
        attended 3.min, 5.min, 8.min
    }
    hazards {
        risk 'noise', 88.dB
        risk 'electricity'
        risk 'slip'
        wear 'waterproof boots'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'pressure washer'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'No grit runs off'
        avoid 'Lance nearer than 30 cm'
        avoid 'Jet into seams'
    }
    example 'saloon', on: 'saloon',
            attended: 5.1.min..5.2.min,
            sets: ['wet', 'rinsed'], clears: ['dry', 'seams-dry', 'panel-wiped', 'live', 'dusty']
    example 'heavily soiled van', on: 'medium-van', given: [soiling: 'heavy'],
            attended: 10.min..10.1.min,
            sets: ['wet', 'rinsed'], clears: ['dry', 'seams-dry', 'panel-wiped', 'live', 'dusty']
}
