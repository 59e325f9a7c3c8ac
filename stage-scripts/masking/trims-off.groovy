// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('trims-off') {
    title 'Trims off'
    about 'Takes off badges, plates, trims and aerial.'
    family 'masking'
    revision 1
    worksOn 'trim', 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'grit behind a trim scratches as it comes off'
    }
    after {
        sets 'trim-off'
    }
    time {
        attended 4.min, 8.min, 20.min, per: 'piece'
    }
    uses {
        item 'panel-wipe-liquid', 5.ml, per: 'piece'
    }
    hazards {
        from 'panel-wipe-liquid'
        risk 'blades'
        risk 'heat'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'plastic levers', 'cutting line', 'warm-air gun'
    }
    climate {
        between 18.C, 35.C
    }
    checks {
        confirm 'Parts bagged and labelled'
        avoid 'Levering cold'
        avoid 'Clips not priced'
    }
    example 'six badges and trims', on: 'saloon', zones: ['trim'], drivers: [piece: 6],
            attended: 56.min..56.min,
            uses: ['panel-wipe-liquid': 30.ml],
            sets: ['trim-off']
    example 'classic with 26 pieces', on: 'coupe', zones: ['trim'], drivers: [piece: 26],
            attended: 242.min..243.min,
            uses: ['panel-wipe-liquid': 130.ml],
            sets: ['trim-off']
}
