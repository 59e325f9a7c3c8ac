// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('warm-cure') {
    title 'Warm cure'
    about 'Hardens a coating with a lamp, panel by panel.'
    family 'protection'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'coated', why: 'there is nothing to cure'
        refuses 'masked', why: 'the lamp prints tape into paint'
        refuses 'filmed', why: 'the lamp lifts film'
        refuses 'touched-in', why: 'the lamp boils fresh touch-in'
    }
    after {
        sets 'water-safe'
    }
    time {
        setUp 8.min
        attended 3.min, 4.min, 6.min, per: 'panel'
        standing 15.min, why: '15 to 20 minutes a panel at 50 to 60 °C skin'
    }
    hazards {
        risk 'radiation'
        risk 'heat'
        wear 'lamp goggles'
    }
    crew {
        people 1
    }
    place {
        bay 'clean'
        equipment 'infrared lamp', 'skin thermometer'
    }
    checks {
        confirm 'Skin temperature logged'
        avoid 'Over tape, film or plastics too hot'
    }
    example 'thirteen panels', on: 'saloon',
            attended: 62.min..63.min, standing: 15.min..15.min,
            sets: ['water-safe']
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 12.1.min..12.2.min, standing: 15.min..15.min,
            sets: ['water-safe']
}
