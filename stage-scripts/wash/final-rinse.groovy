// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('final-rinse') {
    title 'Final rinse'
    about 'Rinses by open hose, de-ionised water last.'
    family 'wash'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'wet', why: 'the last product must not have dried'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'live', 'dry', 'seams-dry', 'panel-wiped', 'dusty'
        clears 'panel-wiped', reach: 'neighbours'
        sets 'rinsed', 'wet'
    }
    time {
        attended 3.min, 4.min, 7.min
    }
    uses {
        item 'deionised-water', 25.l
    }
    hazards {
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'open hose', 'water filter'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Water sheets, no suds from gaps'
        avoid 'Tap water in sun leaves marks'
    }
    example 'saloon', on: 'saloon',
            attended: 4.3.min..4.4.min,
            uses: ['deionised-water': 25.l],
            sets: ['rinsed', 'wet'], clears: ['live', 'dry', 'seams-dry', 'panel-wiped', 'dusty']
    example 'coupe', on: 'coupe',
            attended: 4.3.min..4.4.min,
            uses: ['deionised-water': 25.l],
            sets: ['rinsed', 'wet'], clears: ['live', 'dry', 'seams-dry', 'panel-wiped', 'dusty']
}
