// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('finish-check') {
    title 'Finish and hologram check'
    about 'Looks over the bare finish under three lights.'
    family 'correction'
    revision 1
    inputs {
        choice 'standard', from: ['usual', 'show'], usual: 'usual', why: 'show standard takes one and a half to two times as long'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'panel-wiped', why: 'oils fill and hide'
        refuses 'oily', 'dusty', 'glazed', why: 'what is on the paint hides what is in it'
        needs 'lit', why: 'defects show only under inspection light'
    }
    after {
        sets 'finish-checked'
    }
    time {
        setUp 2.min
        attended 0.5.min, 0.8.min, 1.6.min, per: 'm2', times: (standard == 'show' ? 1.75 : 1)
    }
    hazards {
        risk 'electricity'
    }
    crew {
        people 1
        checker()
    }
    place {
        bay 'lit'
        equipment 'three inspection lamps'
    }
    checks {
        confirm 'A second person passes each panel'
        avoid 'Checked with oils on'
    }
    example 'paint of a saloon', on: 'saloon',
            attended: 13.9.min..14.min,
            sets: ['finish-checked']
    example 'dark show bonnet', on: 'saloon', zones: ['bonnet'], with: [standard: 'show'], given: [colour: 'dark'],
            attended: 4.8.min..4.9.min,
            sets: ['finish-checked']
}
