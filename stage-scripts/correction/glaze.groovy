// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('glaze') {
    title 'Glaze'
    about 'Fills fine defects; removes nothing.'
    family 'correction'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'polished', 'dry', why: 'it only dresses a polished finish'
        needs 'cool', why: 'a hot panel bakes it on'
    }
    after {
        clears 'panel-wiped', 'finish-checked'
        sets 'glazed', 'oily'
    }
    time {
        setUp 3.min
        attended 1.0.min, 1.6.min, 2.8.min, per: 'm2'
        standing 5.min, why: 'hazes in 5 to 15 minutes before it is buffed'
    }
    uses {
        item 'medium-polish', 6.ml, per: 'm2'
        item 'short-pile-cloth', 0.5.each, per: 'm2'
    }
    hazards {
        from 'medium-polish'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Even'
        avoid 'Sold as removal'
        avoid 'Before a coating'
    }
    example 'paint of a saloon', on: 'saloon',
            attended: 26.min..27.min, standing: 5.min..5.min,
            uses: ['medium-polish': 81.36.ml, 'short-pile-cloth': 6.78.each],
            sets: ['glazed', 'oily'], clears: ['panel-wiped', 'finish-checked']
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 5.5.min..5.6.min, standing: 5.min..5.min,
            uses: ['medium-polish': 9.ml, 'short-pile-cloth': 0.75.each],
            sets: ['glazed', 'oily'], clears: ['panel-wiped', 'finish-checked']
}
