// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('trim-restore') {
    title 'Trim restored and dressed'
    about 'Cleans, restores and dresses plastic trim and rubber seals.'
    family 'trim'
    revision 1
    worksOn 'trim'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'dressing over dirt locks it in'
    }
    after {
        clears 'panel-wiped'
        sets 'dressed', 'oily'
    }
    time {
        attended 0.5.min, 0.9.min, 1.8.min, per: 'm'
        standing 10.min, why: 'soaks in 10 to 30 minutes'
    }
    uses {
        item 'trim-restorer', 2.ml, per: 'm'
        item 'all-purpose-cleaner', 5.ml, per: 'm'
    }
    hazards {
        from 'trim-restorer'
        from 'all-purpose-cleaner'
    }
    crew {
        people 1
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Even black, no sling'
        avoid 'Before machine work or coating'
    }
    example 'trim of a saloon', on: 'saloon', zones: ['trim'],
            attended: 11.8.min..11.8.min, standing: 10.min..10.min,
            uses: ['trim-restorer': 24.ml, 'all-purpose-cleaner': 60.ml],
            sets: ['dressed', 'oily'], clears: ['panel-wiped']
    example 'trim of an estate', on: 'estate', zones: ['trim'],
            attended: 15.7.min..15.8.min, standing: 10.min..10.min,
            uses: ['trim-restorer': 32.ml, 'all-purpose-cleaner': 80.ml],
            sets: ['dressed', 'oily'], clears: ['panel-wiped']
}
