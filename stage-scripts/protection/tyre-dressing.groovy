// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('tyre-dressing') {
    title 'Tyre dressing'
    about 'Dresses tyre walls with a water-based dressing.'
    family 'protection'
    revision 1
    worksOn 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'dressing over dirt or damp slings'
    }
    after {
        sets 'dressed'
    }
    time {
        attended 1.5.min, 2.min, 4.min, per: 'tyre'
        standing 10.min, why: 'dries in 10 to 30 minutes'
    }
    uses {
        item 'dressing', 20.ml, per: 'tyre'
    }
    crew {
        people 1
    }
    checks {
        confirm 'No sling after a roll'
        avoid 'Tread or brake touched'
        avoid 'On motorcycles'
    }
    example 'four tyres', on: 'saloon',
            attended: 9.min..9.min, standing: 10.min..10.min,
            uses: [dressing: 80.ml],
            sets: ['dressed']
    example 'front tyres', on: 'medium-van', zones: ['wheel-front-left', 'wheel-front-right'],
            attended: 4.5.min..4.5.min, standing: 10.min..10.min,
            uses: [dressing: 40.ml],
            sets: ['dressed']
}
