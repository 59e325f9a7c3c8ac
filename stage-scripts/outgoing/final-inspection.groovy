// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('final-inspection') {
    title 'Final inspection'
    about 'A second person looks over the work; after-readings and after-photographs.'
    family 'outgoing'
    revision 1
    inputs {
        choice 'standard', from: ['usual', 'show'], usual: 'usual', why: 'show standard takes one and a half to two times as long'
    }
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'water hides what the lamp should show'
        needs 'lit', why: 'defects show only under inspection light'
        refuses 'masked', 'live', 'dusty', why: 'it is not finished'
        refuses 'sanded', why: 'sanding haze is not a finish; one step does not clear it'
    }
    after {
        sets 'final-passed'
    }
    time {
        attended 15.min, 25.min, 50.min, times: (standard == 'show' ? 1.75 : 1)
    }
    uses {
        item 'short-pile-cloth', 1.each
    }
    crew {
        people 1
        checker()
    }
    place {
        bay 'lit'
        equipment 'inspection lamps', 'film gauge', 'camera'
    }
    checks {
        confirm 'A second person signs'
        confirm 'After-readings on the same marks'
        avoid 'Own work passed by own eyes'
    }
    example 'saloon', on: 'saloon', zones: ['surface:paint'],
            attended: 27.min..28.min,
            uses: ['short-pile-cloth': 1.each],
            sets: ['final-passed']
    example 'estate', on: 'estate', zones: ['surface:paint'],
            attended: 30.min..31.min,
            uses: ['short-pile-cloth': 1.1.each],
            sets: ['final-passed']
}
