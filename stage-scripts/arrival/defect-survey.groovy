// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('defect-survey') {
    title 'Defect survey'
    about 'Looks over every surface under two colours of light and grades what is found.'
    family 'arrival'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof', 'engine-bay', 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'dirt and water hide what the lamp should show'
        needs 'lit', why: 'defects show only under inspection light'
    }
    after {
        sets 'surveyed'
    }
    time {
        attended 12.min, 22.min, 50.min
    }
    uses {
        item 'short-pile-cloth', 0.5.each
    }
    hazards {
        risk 'electricity'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'loupe', 'tape markers', 'inspection lamps'
    }
    checks {
        confirm 'Each zone has a defect grade and a photograph'
        avoid 'One light only'
        avoid 'Fillers from a past job not wiped off first'
    }
    example 'whole saloon', on: 'saloon', zones: ['bonnet', 'roof'],
            attended: 25.min..25.min,
            uses: ['short-pile-cloth': 0.5.each],
            sets: ['surveyed']
    example 'whole small car', on: 'small-five-door', zones: ['bonnet', 'roof'],
            attended: 21.min..22.min,
            uses: ['short-pile-cloth': 0.425.each],
            sets: ['surveyed']
}
