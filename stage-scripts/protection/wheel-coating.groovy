// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('wheel-coating') {
    title 'Wheel coating'
    about 'Coats clean wheels, best with the wheels off.'
    family 'protection'
    revision 1
    worksOn 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'iron-clear', 'dry', why: 'it does not key on brake dust or damp'
        needs 'panel-wiped', why: 'it does not key on oil'
        needs 'cool', 'still', why: 'heat and draught flash it too soon'
    }
    after {
        clears 'panel-wiped'
        sets 'coated', 'curing'
        arrives 'water-safe', after: 720.min
    }
    time {
        setUp 10.min
        attended 8.min, 12.min, 20.min, per: 'wheel'
        standing 120.min, why: 'flashes in 2 to 10 minutes; sets 2 hours before the wheel is refitted'
    }
    uses {
        item 'wheel-coating-liquid', 6.ml, per: 'wheel'
        item 'short-pile-cloth', 1.each, per: 'wheel'
        item 'panel-wipe-liquid', 10.ml, per: 'wheel'
    }
    hazards {
        from 'wheel-coating-liquid'
        from 'panel-wipe-liquid'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
        helpers 2, takes: 0.70
        skill 'coating'
    }
    place {
        bay 'clean'
    }
    climate {
        between 15.C, 25.C
        humidity 40.percent, 65.percent
    }
    checks {
        confirm 'No smear'
        avoid 'Coated on the car, barrels missed'
    }
    example 'four wheels', on: 'saloon',
            attended: 60.min..61.min, standing: 120.min..120.min,
            uses: ['wheel-coating-liquid': 24.ml, 'short-pile-cloth': 4.each, 'panel-wipe-liquid': 40.ml],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
    example 'one wheel', on: 'saloon', zones: ['wheel-front-left'],
            attended: 22.min..23.min, standing: 120.min..120.min,
            uses: ['wheel-coating-liquid': 6.ml, 'short-pile-cloth': 1.each, 'panel-wipe-liquid': 10.ml],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
}
