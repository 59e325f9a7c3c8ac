// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('tape-up') {
    title 'Tape up'
    about 'Tapes trims, edges, body lines and jets; sheets the glass.'
    family 'masking'
    revision 1
    worksOn 'trim', 'paint', 'glass', 'lamp', 'bright-metal'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', why: 'tape lifts off dirt'
        needs 'dry', 'seams-dry', why: 'tape will not hold on damp, and weeping seams lift it in mid-pass'
        refuses 'curing', why: 'tape prints into a soft coating'
    }
    after {
        sets 'masked'
    }
    time {
        attended 0.4.min, 0.7.min, 1.2.min, per: 'm'
    }
    uses {
        item 'masking-tape', 0.08.each, per: 'm'
        item 'masking-sheet', 0.15.m, per: 'm'
    }
    hazards {
        risk 'blades'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
    }
    place {
        bay 'lit'
    }
    checks {
        confirm 'Edges, body lines, jets and textured plastic covered'
        avoid 'Damp'
        avoid 'Tape over 48 hours'
        avoid 'Tape under a lamp'
    }
    example 'full tape-up of a saloon', on: 'saloon',
            attended: 26.min..27.min,
            uses: ['masking-tape': 2.88.each, 'masking-sheet': 5.4.m],
            sets: ['masked']
    example 'full tape-up of an estate', on: 'estate',
            attended: 32.min..33.min,
            uses: ['masking-tape': 3.52.each, 'masking-sheet': 6.6.m],
            sets: ['masked']
}
