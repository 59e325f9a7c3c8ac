// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('fabric-roof-proof') {
    title 'Fabric roof proof'
    about 'Proofs a clean, dry fabric roof.'
    family 'trim'
    revision 1
    inputs {
        count 'coats', from: 1, to: 2, usual: 1, why: 'old fabric drinks two'
    }
    worksOn 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'proofer does not soak into damp or dirt'
        needs 'ventilated', 'cool', why: 'the proofer is solvent-borne'
    }
    after {
        clears 'panel-wiped'
        sets 'proofed', 'curing'
        arrives 'water-safe', after: 720.min
    }
    time {
        attended 5.min, 8.min, 12.min, per: 'm2', times: coats
    }
    uses {
        item 'roof-care', 150.ml, per: 'm2', times: coats
        item 'masking-sheet', 3.m, per: 'm2'
    }
    hazards {
        from 'roof-care'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
    }
    place {
        equipment 'sheeting', 'sprayer'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Beads all over'
        avoid 'Overspray on glass and paint'
    }
    example 'convertible', on: 'convertible',
            attended: 19.6.min..19.6.min,
            uses: ['roof-care': 360.ml, 'masking-sheet': 7.2.m],
            sets: ['proofed', 'curing'], clears: ['panel-wiped']
    example 'two coats on old fabric', on: 'convertible', with: [coats: 2],
            attended: 39.min..40.min,
            uses: ['roof-care': 720.ml, 'masking-sheet': 7.2.m],
            sets: ['proofed', 'curing'], clears: ['panel-wiped']
}
