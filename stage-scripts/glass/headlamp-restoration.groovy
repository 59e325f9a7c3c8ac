// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('headlamp-restoration') {
    title 'Headlamp restoration'
    about 'Abrades, polishes and guards a dull lens.'
    family 'glass'
    revision 1
    worksOn 'lamp'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'grit scratches the lens'
        needs 'masked', why: 'the disc runs onto the paint'
        needs 'ventilated', 'cool', why: 'the guard is solvent-borne'
    }
    after {
        sets 'coated', 'curing'
        arrives 'water-safe', after: 60.min
    }
    time {
        attended 25.min, 40.min, 70.min, per: 'lamp'
    }
    uses {
        item 'headlamp-kit', 0.5.each, per: 'lamp'
        item 'masking-tape', 0.1.each, per: 'lamp'
    }
    hazards {
        from 'headlamp-kit'
        risk 'dust'
        risk 'ignition'
        wear 'dust mask'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'small machine'
    }
    climate {
        between 15.C, 25.C
        humidity 40.percent, 65.percent
    }
    checks {
        confirm 'Clear and even beam'
        confirm 'Guard hard after 1 to 12 hours'
        avoid 'No ultraviolet guard'
        avoid 'Cracks in the lens filled'
    }
    example 'both lamps', on: 'saloon',
            attended: 85.min..85.min,
            uses: ['headlamp-kit': 1.each, 'masking-tape': 0.2.each],
            sets: ['coated', 'curing']
    example 'one lamp', on: 'saloon', zones: ['headlamp-left'],
            attended: 42.min..43.min,
            uses: ['headlamp-kit': 0.5.each, 'masking-tape': 0.1.each],
            sets: ['coated', 'curing']
}
