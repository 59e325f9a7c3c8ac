// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('maintenance-wash') {
    title 'Maintenance wash'
    about 'Foam, two buckets, wheels, dry and glass in one visit, with rinses of its own.'
    family 'maintenance'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'loose-soil', 'seams-dry', 'dressed', 'panel-wiped', 'live'
        sets 'washed', 'rinsed', 'dry'
    }
    time {
        attended 35.min, 50.min, 80.min
    }
    uses {
        item 'snow-foam', 1100.ml, diluted: '1:10'      // ready mix: 100 ml of concentrate
        item 'shampoo', 35.ml
        item 'wheel-cleaner', 320.ml
        item 'drying-towel', 0.01.each
        item 'glass-cleaner', 60.ml
        item 'deionised-water', 50.l
    }
    hazards {
        from 'snow-foam'
        from 'shampoo'
        from 'wheel-cleaner'
        from 'glass-cleaner'
        risk 'slip'
        risk 'electricity'
        risk 'noise', 88.dB
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'foam lance', 'pressure washer', 'two buckets', 'wheel brushes'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Panels and glass clear, wheels clean'
        confirm 'Foam rinsed within 6 minutes'
        avoid 'Wrong soap on a coating'
        avoid 'Washed in sun'
    }
    example 'saloon', on: 'saloon',
            attended: 52.min..53.min,
            uses: ['snow-foam': 100.ml, shampoo: 35.ml, 'wheel-cleaner': 320.ml, 'drying-towel': 0.01.each, 'glass-cleaner': 60.ml, 'deionised-water': 50.l],
            sets: ['washed', 'rinsed', 'dry'], clears: ['loose-soil', 'seams-dry', 'dressed', 'panel-wiped', 'live']
    example 'medium van', on: 'medium-van',
            attended: 68.min..69.min,
            uses: ['snow-foam': 130.ml, shampoo: 45.5.ml, 'wheel-cleaner': 416.ml, 'drying-towel': 0.013.each, 'glass-cleaner': 78.ml, 'deionised-water': 65.l],
            sets: ['washed', 'rinsed', 'dry'], clears: ['loose-soil', 'seams-dry', 'dressed', 'panel-wiped', 'live']
}
