// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('glass-clean-in-and-out') {
    title 'Glass clean, inside and out'
    about 'Cleans all glass on both sides.'
    family 'glass'
    revision 1
    worksOn 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'water streaks the cleaner'
        refuses 'loose-soil', why: 'grit under a cloth makes the swirls we are paid to remove'
    }
    after {
        sets 'glass-clean'
    }
    time {
        attended 10.min, 15.min, 28.min
    }
    uses {
        item 'glass-cleaner', 80.ml
        item 'short-pile-cloth', 3.each
    }
    hazards {
        from 'glass-cleaner'
        keepApart 'ammonia', why: 'crazes tinted film'
    }
    crew {
        people 1
    }
    place {
        equipment 'glass cloths'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'No smear from the driver\'s seat at a night angle'
        avoid 'Done before the cabin'
        avoid 'Ammonia on tinted film'
    }
    example 'saloon', on: 'saloon',
            attended: 16.3.min..16.4.min,
            uses: ['glass-cleaner': 80.ml, 'short-pile-cloth': 3.each],
            sets: ['glass-clean']
    example 'estate', on: 'estate',
            attended: 17.9.min..18.min,
            uses: ['glass-cleaner': 88.ml, 'short-pile-cloth': 3.3.each],
            sets: ['glass-clean']
}
