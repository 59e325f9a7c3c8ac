// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('bright-metal-polish') {
    title 'Bright metal polish'
    about 'Polishes bright pieces and exhaust tips.'
    family 'correction'
    revision 1
    inputs {
        count 'passes', from: 1, to: 3, usual: 1, why: 'dull pieces take more'
    }
    worksOn 'bright-metal'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'grit scratches soft metal'
        needs 'cool', why: 'a hot tip bakes the polish on'
    }
    after {
        clears 'panel-wiped'
        sets 'polished', 'oily'
    }
    time {
        setUp 3.min
        attended 5.min, 8.min, 15.min, per: 'piece', times: passes
    }
    uses {
        item 'metal-polish', 4.ml, per: 'piece', times: passes
        item 'short-pile-cloth', 1.each, per: 'piece', times: passes
    }
    hazards {
        from 'metal-polish'
        risk 'dust'
    }
    crew {
        people 1
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'No black transfer'
        avoid 'Plated plastic or lacquered alloy polished bare'
    }
    example 'exhaust tips', on: 'saloon',
            attended: 20.min..21.min,
            uses: ['metal-polish': 8.ml, 'short-pile-cloth': 2.each],
            sets: ['polished', 'oily'], clears: ['panel-wiped']
    example 'forty bright pieces of a classic', on: 'coupe', zones: ['bright-metal'], drivers: [piece: 40],
            attended: 349.min..350.min,
            uses: ['metal-polish': 160.ml, 'short-pile-cloth': 40.each],
            sets: ['polished', 'oily'], clears: ['panel-wiped']
}
