// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('arches-and-liners') {
    title 'Arches and liners'
    about 'Washes arches and liners by long brush.'
    family 'wheels'
    revision 1
    worksOn 'arch'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'loose-soil', 'dry', 'seams-dry'
        clears 'seams-dry', 'panel-wiped', reach: 'neighbours'
        sets 'washed', 'wet', 'rinsed'
    }
    time {
        attended 3.min, 5.min, 9.min, per: 'arch'
        standing 2.min, why: 'the cleaner works 2 to 5 minutes and is rinsed inside the stage'
    }
    uses {
        item 'all-purpose-cleaner', 30.ml, per: 'arch'      // concentrate for 1:10 to 1:20
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
        equipment 'long brush'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Rinses clear'
        confirm 'Rinsed within 5 minutes'
        avoid 'After the body wash: it splashes'
    }
    example 'four arches', on: 'saloon',
            attended: 21.min..22.min, standing: 2.min..2.min,
            uses: ['all-purpose-cleaner': 120.ml],
            sets: ['washed', 'wet', 'rinsed'], clears: ['loose-soil', 'dry', 'seams-dry', 'panel-wiped']
    example 'front arches only', on: 'estate', zones: ['arch-front-left', 'arch-front-right'],
            attended: 10.6.min..10.7.min, standing: 2.min..2.min,
            uses: ['all-purpose-cleaner': 60.ml],
            sets: ['washed', 'wet', 'rinsed'], clears: ['loose-soil', 'dry', 'seams-dry', 'panel-wiped']
}
