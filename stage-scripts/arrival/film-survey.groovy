// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('film-survey') {
    title 'Paint depth survey'
    about 'Takes film readings panel by panel so that the paint that is spent has been counted.'
    family 'arrival'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'dirt and water add to the reading'
        needs 'cool', why: 'heat shifts the gauge'
        refuses 'live', why: 'a wet product adds to the reading'
    }
    after {
        sets 'measured'
    }
    time {
        attended 1.min, 1.6.min, 3.5.min, per: 'panel'
    }
    uses {
        item 'short-pile-cloth', 0.1.each, per: 'panel'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'film gauge', 'check foils'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Readings for each panel as planned'
        confirm 'Odd ones read again'
        avoid 'One reading and no more'
        avoid 'Wrong metal mode'
        avoid 'Probe on an edge'
    }
    example 'saloon with thirteen panels', on: 'saloon',
            attended: 23.min..24.min,
            uses: ['short-pile-cloth': 1.3.each],
            sets: ['measured']
    example 'a van has twelve', on: 'medium-van',
            attended: 21.min..22.min,
            uses: ['short-pile-cloth': 1.2.each],
            sets: ['measured']
}
