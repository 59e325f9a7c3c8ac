// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('wheels-on-car') {
    title 'Wheels cleaned on the car'
    about 'Cleans faces and spokes with the wheels on; has its own rinse.'
    family 'wheels'
    revision 1
    inputs {
        choice 'cleaner', from: ['neutral', 'acid'], usual: 'neutral', why: 'acid only on sound lacquer and after a plain rinse'
    }
    worksOn 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', why: 'hot brakes dry the cleaner and crack'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
        if (cleaner == 'acid') {
            refuses 'live', why: 'acid on iron remover gives off a toxic sulphide gas'
        }
    }
    after {
        clears 'loose-soil', 'dry', 'seams-dry', 'dressed', 'panel-wiped'
        clears 'seams-dry', 'panel-wiped', reach: 'neighbours'
        sets 'washed', 'wet', 'rinsed'
    }
    time {
        attended 4.min, 6.min, 12.min, per: 'wheel'
        standing 2.min, why: 'the cleaner works 2 to 5 minutes and is rinsed inside the stage'
    }
    uses {
        if (cleaner == 'acid') {
            item 'acid-wheel-cleaner', 100.ml, per: 'wheel', diluted: '1:3'      // 25 ml of concentrate
        } else {
            item 'wheel-cleaner', 80.ml, per: 'wheel'
        }
    }
    hazards {
        if (cleaner == 'acid') {
            from 'acid-wheel-cleaner'
            keepApart 'hypochlorite', why: 'gives off chlorine'
            keepApart 'thioglycolate', why: 'gives off a toxic sulphide gas'
        } else {
            from 'wheel-cleaner'
            keepApart 'acid', why: 'an acid and an alkali spit and heat'
        }
        risk 'slip'
        risk 'heat'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'wheel brushes'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Spokes and lip clean'
        confirm 'Brakes were cold'
        confirm 'Rinsed within 5 minutes'
        avoid 'Acid on bare, polished or cracked finish'
    }
    example 'four wheels', on: 'saloon',
            attended: 26.min..27.min, standing: 2.min..2.min,
            uses: ['wheel-cleaner': 320.ml],
            sets: ['washed', 'wet', 'rinsed'], clears: ['loose-soil', 'dry', 'seams-dry', 'dressed', 'panel-wiped']
    example 'four wheels with acid cleaner', on: 'saloon', with: [cleaner: 'acid'],
            attended: 26.min..27.min, standing: 2.min..2.min,
            uses: ['acid-wheel-cleaner': 100.ml],
            sets: ['washed', 'wet', 'rinsed'], clears: ['loose-soil', 'dry', 'seams-dry', 'dressed', 'panel-wiped']
    example 'one wheel', on: 'saloon', zones: ['wheel-front-left'], given: [soiling: 'heavy'],
            attended: 10.min..10.min, standing: 2.min..2.min,
            uses: ['wheel-cleaner': 80.ml],
            sets: ['washed', 'wet', 'rinsed'], clears: ['loose-soil', 'dry', 'seams-dry', 'dressed', 'panel-wiped']
}
