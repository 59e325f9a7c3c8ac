// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('de-mask') {
    title 'De-mask'
    about 'Takes the tape off and clears residue; clip-on parts follow after the last coat.'
    family 'masking'
    revision 1
    inputs {
        choice 'standard', from: ['usual', 'show'], usual: 'usual', why: 'show standard takes one and a half to two times as long'
        choice 'refits', from: ['none', 'stuck-on', 'clip-on'], usual: 'none', why: 'parts that go back on: stuck-on badges before a coating, clips after it'
    }
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needsAny 'masked', 'trim-off', why: 'there is nothing to take off'
    }
    after {
        clears 'masked', 'trim-off'
    }
    time {
        attended 8.min, 15.min, 35.min, times: (standard == 'show' ? 1.75 : 1)
    }
    uses {
        item 'short-pile-cloth', 2.each
    }
    hazards {
        risk 'blades'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
    }
    checks {
        confirm 'No residue line'
        avoid 'Pulled fast off an old repaint: lifts it'
    }
    example 'saloon', on: 'saloon', zones: ['surface:paint'],
            attended: 17.1.min..17.2.min,
            uses: ['short-pile-cloth': 2.each],
            clears: ['masked', 'trim-off']
    example 'show coupe', on: 'coupe', zones: ['surface:paint'], with: [standard: 'show'],
            attended: 30.min..31.min,
            uses: ['short-pile-cloth': 2.each],
            clears: ['masked', 'trim-off']
}
