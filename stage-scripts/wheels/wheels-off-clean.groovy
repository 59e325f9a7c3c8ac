// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('wheels-off-clean') {
    title 'Wheels off and cleaned'
    about 'Takes the wheels off; cleans barrels, hubs and calipers.'
    family 'wheels'
    revision 1
    inputs {
        yesNo 'heavy', usual: false, why: 'a wheel over 25 kg needs two people'
    }
    worksOn 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', why: 'hot brakes dry the cleaner and crack'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'loose-soil', 'dry', 'seams-dry', 'panel-wiped'
        clears 'seams-dry', 'panel-wiped', reach: 'neighbours'
        sets 'wheels-off', 'washed', 'iron-clear', 'tar-clear', 'rinsed', 'wet'
    }
    time {
        attended 20.min, 30.min, 55.min, per: 'wheel'
        standing 3.min, why: 'the cleaner works 3 to 6 minutes and is rinsed inside the stage'
    }
    uses {
        item 'wheel-cleaner', 100.ml, per: 'wheel'
        item 'iron-remover', 50.ml, per: 'wheel'
        item 'tar-solvent', 15.ml, per: 'wheel'
    }
    hazards {
        from 'wheel-cleaner'
        from 'iron-remover'
        from 'tar-solvent'
        risk 'lifting'
        risk 'slip'
        risk 'noise', 85.dB
        risk 'dust'
        wear 'safety shoes'
        keepApart 'acid', why: 'with iron remover gives off a toxic sulphide gas'
        keepApart 'hypochlorite', why: 'with iron remover gives off a toxic gas'
    }
    crew {
        people heavy ? 2 : 1
    }
    place {
        bay 'wash'
        equipment 'lift or jack and stands', 'wheel brushes'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Barrel clean'
        confirm 'Jack points noted'
        confirm 'Nuts bagged'
        confirm 'Rinsed within 6 minutes'
        avoid 'Jack on a sill seam'
        avoid 'Old brake dust blown: possible asbestos, wipe it wet and bag it'
    }
    example 'four wheels', on: 'saloon',
            attended: 130.min..130.min, standing: 3.min..3.min,
            uses: ['wheel-cleaner': 400.ml, 'iron-remover': 200.ml, 'tar-solvent': 60.ml],
            sets: ['wheels-off', 'washed', 'iron-clear', 'tar-clear', 'rinsed', 'wet'], clears: ['loose-soil', 'dry', 'seams-dry', 'panel-wiped']
    example 'two heavy wheels', on: 'large-off-road', zones: ['wheel-front-left', 'wheel-front-right'], with: [heavy: true],
            attended: 65.min..65.min, standing: 3.min..3.min,
            uses: ['wheel-cleaner': 200.ml, 'iron-remover': 100.ml, 'tar-solvent': 30.ml],
            sets: ['wheels-off', 'washed', 'iron-clear', 'tar-clear', 'rinsed', 'wet'], clears: ['loose-soil', 'dry', 'seams-dry', 'panel-wiped']
}
