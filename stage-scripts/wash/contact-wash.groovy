// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('contact-wash') {
    title 'Two-bucket contact wash'
    about 'Washes by mitt from top to bottom, two buckets with grit guards.'
    family 'wash'
    revision 1
    worksOn 'paint', 'glass', 'trim', 'lamp', 'bright-metal'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'wet', 'rinsed', why: 'grit under a mitt makes the swirls we are paid to remove'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'loose-soil', 'rinsed', 'dry', 'seams-dry', 'panel-wiped', 'dressed'
        sets 'washed', 'live'
    }
    time {
        attended 0.9.min, 1.3.min, 2.2.min, per: 'm2'
        standing 0.min, 10.min, why: 'rinse or wipe it off before it dries'
    }
    uses {
        item 'shampoo', 2.2.ml, per: 'm2'
        item 'short-pile-cloth', 0.05.each, per: 'm2'
    }
    hazards {
        from 'shampoo'
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'wash mitts', 'two buckets', 'grit guards'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'The mitt comes back clean'
        avoid 'Bottom first'
        avoid 'A dropped mitt used again'
    }
    example 'saloon, paint and glass', on: 'saloon',
            attended: 23.min..24.min,
            uses: [shampoo: 37.312.ml, 'short-pile-cloth': 0.848.each],
            sets: ['washed', 'live'], clears: ['loose-soil', 'rinsed', 'dry', 'seams-dry', 'panel-wiped', 'dressed']
    example 'heavy soil on an estate', on: 'estate', given: [soiling: 'heavy'],
            attended: 38.min..39.min,
            uses: [shampoo: 40.7.ml, 'short-pile-cloth': 0.925.each],
            sets: ['washed', 'live'], clears: ['loose-soil', 'rinsed', 'dry', 'seams-dry', 'panel-wiped', 'dressed']
}
