// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('trim-coating') {
    title 'Trim coating'
    about 'Coats textured plastic trim.'
    family 'protection'
    revision 1
    worksOn 'trim'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'it does not key on dirt or damp'
        needs 'panel-wiped', why: 'it does not key on oil'
        needs 'cool', why: 'heat flashes it too soon'
        refuses 'masked', why: 'coating bridges tape and tears'
    }
    after {
        clears 'panel-wiped'
        sets 'coated', 'curing'
        arrives 'water-safe', after: 240.min
    }
    time {
        setUp 5.min
        attended 0.8.min, 1.3.min, 2.2.min, per: 'm'
    }
    uses {
        item 'trim-restorer', 2.ml, per: 'm'
        item 'short-pile-cloth', 0.1.each, per: 'm'
    }
    hazards {
        from 'trim-restorer'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
        helpers 2, takes: 0.70
    }
    place {
        bay 'clean'
    }
    climate {
        between 15.C, 25.C
        humidity 40.percent, 65.percent
    }
    checks {
        confirm 'Even, none on paint'
        confirm 'Kept dry 4 to 12 hours'
        avoid 'Residue left 10 minutes sets'
    }
    example 'trim of a saloon', on: 'saloon', zones: ['trim'],
            attended: 21.min..22.min,
            uses: ['trim-restorer': 24.ml, 'short-pile-cloth': 1.2.each],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
    example 'trim of a large off-road-style car', on: 'large-off-road', zones: ['trim'],
            attended: 40.min..41.min,
            uses: ['trim-restorer': 52.ml, 'short-pile-cloth': 2.6.each],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
}
