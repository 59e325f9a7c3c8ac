// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('scale-removal') {
    title 'Mineral removal'
    about 'Dissolves water marks from paint and glass.'
    family 'decontamination'
    revision 1
    inputs {
        count 'passes', from: 1, to: 2, usual: 1, why: 'old rings take a second pass'
    }
    worksOn 'paint', 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'rinsed', why: 'dirt uses the acid up'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        refuses 'live', why: 'two products on one zone are an unknown mixture'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed'
        sets 'scale-clear', 'wet', 'live'
    }
    time {
        attended 1.2.min, 2.min, 4.min, per: 'm2', times: passes
        standing 1.min, 3.min, why: 'acid that dries etches'
    }
    uses {
        item 'scale-remover', 15.ml, per: 'm2', times: passes
        item 'short-pile-cloth', 0.2.each, per: 'm2'
    }
    hazards {
        from 'scale-remover'
        risk 'slip'
        keepApart 'hypochlorite', why: 'gives off chlorine'
        keepApart 'thioglycolate', why: 'gives off a toxic sulphide gas'
        keepApart 'alkaline', why: 'an acid and an alkali spit and heat'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'hand pads'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Rings gone, or proven etched'
        avoid 'Scrubbing etched marks'
        avoid 'Acid dried'
    }
    example 'glass of a saloon', on: 'saloon', zones: ['surface:glass'],
            attended: 7.4.min..7.5.min, standing: 1.min..1.min,
            uses: ['scale-remover': 51.ml, 'short-pile-cloth': 0.68.each],
            sets: ['scale-clear', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed']
    example 'bonnet, two passes', on: 'saloon', zones: ['bonnet'], with: [passes: 2],
            attended: 6.6.min..6.6.min, standing: 1.min..1.min,
            uses: ['scale-remover': 45.ml, 'short-pile-cloth': 0.3.each],
            sets: ['scale-clear', 'wet', 'live'], clears: ['dry', 'seams-dry', 'panel-wiped', 'rinsed', 'waxed', 'sealed']
}
