// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('shuts-and-seams') {
    title 'Shuts and seams'
    about 'Brushes shuts, flap, seams and badges.'
    family 'wash'
    revision 1
    worksOn 'paint', 'trim'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'wet', why: 'grit on a dry seam scratches under the brush'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
    }
    after {
        clears 'rinsed', 'panel-wiped', 'seams-dry'
        sets 'live'
    }
    time {
        attended 6.min, 10.min, 22.min
        standing 0.min, 10.min, why: 'rinse or wipe it off before it dries'
    }
    uses {
        item 'all-purpose-cleaner', 20.ml      // concentrate for 1:10 to 1:20
    }
    hazards {
        from 'all-purpose-cleaner'
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'soft brushes'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Shuts rinse clear'
        avoid 'Done last: dirty water runs over clean paint'
    }
    example 'saloon', on: 'saloon',
            attended: 11.3.min..11.4.min,
            uses: ['all-purpose-cleaner': 20.ml],
            sets: ['live'], clears: ['rinsed', 'panel-wiped', 'seams-dry']
    example 'light soil on a small car', on: 'small-five-door', given: [soiling: 'light'],
            attended: 7.7.min..7.8.min,
            uses: ['all-purpose-cleaner': 17.ml],
            sets: ['live'], clears: ['rinsed', 'panel-wiped', 'seams-dry']
}
