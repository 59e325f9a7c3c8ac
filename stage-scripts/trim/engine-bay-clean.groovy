// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('engine-bay-clean') {
    title 'Engine bay clean and dress'
    about 'Cleans the engine bay at low pressure and dresses it.'
    family 'trim'
    revision 1
    inputs {
        choice 'standard', from: ['usual', 'show'], usual: 'usual', why: 'show standard takes one and a half to two times as long'
    }
    worksOn 'engine-bay'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'engine-cold', 'electrics-covered', why: 'shock, cracked parts and warning lamps'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
    }
    after {
        clears 'loose-soil', 'panel-wiped'
        sets 'washed', 'dressed', 'wet'
        arrives 'dry', after: 30.min
    }
    time {
        attended 25.min, 40.min, 80.min, times: (standard == 'show' ? 1.75 : 1)
        standing 3.min, why: 'the cleaner works 3 to 5 minutes and is rinsed inside the stage'
    }
    uses {
        item 'all-purpose-cleaner', 200.ml
        item 'dressing', 30.ml
    }
    hazards {
        from 'all-purpose-cleaner'
        risk 'electricity'
        risk 'heat'
        risk 'slip'
    }
    crew {
        people 1
        if (surveyed('drive') == 'high-voltage') {
            skill 'high-voltage'
        }
    }
    place {
        bay 'wash'
        equipment 'brushes', 'low-pressure hose'
    }
    checks {
        confirm 'Clean and dry'
        confirm 'Starts, no warning lamps'
        confirm 'Rinsed within 5 minutes'
        avoid 'Jet on connectors'
        avoid 'High-voltage covers opened'
    }
    example 'saloon', on: 'saloon',
            attended: 44.min..45.min, standing: 3.min..3.min,
            uses: ['all-purpose-cleaner': 200.ml, dressing: 30.ml],
            sets: ['washed', 'dressed', 'wet'], clears: ['loose-soil', 'panel-wiped']
    example 'show coupe', on: 'coupe', with: [standard: 'show'],
            attended: 77.min..78.min, standing: 3.min..3.min,
            uses: ['all-purpose-cleaner': 200.ml, dressing: 30.ml],
            sets: ['washed', 'dressed', 'wet'], clears: ['loose-soil', 'panel-wiped']
}
