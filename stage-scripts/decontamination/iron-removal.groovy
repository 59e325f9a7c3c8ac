// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('iron-removal') {
    title 'Iron fallout removal'
    about 'Dissolves iron specks out of paint, glass and wheels.'
    family 'decontamination'
    revision 1
    inputs {
        count 'passes', from: 1, to: 3, usual: 1, why: 'heavily speckled paint takes a second pass'
    }
    worksOn 'paint', 'wheel', 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'rinsed', why: 'dirt uses the product up and shampoo spoils it'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed'
        sets 'iron-clear', 'wet', 'live'
    }
    time {
        attended 0.4.min, 0.6.min, 1.0.min, per: 'm2', times: passes
        standing 3.min, 7.min, why: 'must not dry on the surface'
    }
    uses {
        item 'iron-remover', 75.ml, per: 'm2', times: passes
    }
    hazards {
        from 'iron-remover'
        risk 'slip'
        risk 'harmful-air'
        keepApart 'acid', why: 'gives off a toxic sulphide gas'
        keepApart 'hypochlorite', why: 'gives off a toxic gas'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'sprayer'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Bleeding stops'
        confirm 'The smell is gone after the rinse'
        avoid 'Left to dry'
        avoid 'Rinsed late'
        avoid 'On hot brakes'
    }
    example 'paint of a saloon', on: 'saloon', zones: ['surface:paint'],
            attended: 8.5.min..8.6.min, standing: 3.min..3.min,
            uses: ['iron-remover': 1.017.l],
            sets: ['iron-clear', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed']
    example 'paint and glass, two passes', on: 'saloon', zones: ['surface:paint', 'surface:glass'], with: [passes: 2],
            attended: 21.min..22.min, standing: 3.min..3.min,
            uses: ['iron-remover': 2.544.l],
            sets: ['iron-clear', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed']
}
