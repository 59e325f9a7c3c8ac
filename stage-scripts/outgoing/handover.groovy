// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('handover') {
    title 'Handover and aftercare'
    about 'Walks round with the customer and hands over the aftercare card.'
    family 'outgoing'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof', 'engine-bay', 'cabin', 'vehicle'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'final-passed', why: 'a second person passes the work first'
        needs 'torqued', why: 'a car must not move on loose wheels'
        refuses 'wheels-off', why: 'a car must not move with a wheel off'
        refuses 'masked', 'live', why: 'it is not finished'
        refuses 'fabric-damp', why: 'mould smell within days'
        refuses 'curing', why: 'a clock is still running: the no-water time, the settling or the cure'
    }
    after {
        sets 'handed-over'
    }
    time {
        attended 10.min, 15.min, 30.min
    }
    crew {
        people 1
    }
    place {
        bay 'reception'
        equipment 'aftercare card'
    }
    checks {
        confirm 'The customer has walked round in daylight'
        confirm 'Times written on the card'
        avoid 'The no-water time not said aloud'
    }
    example 'saloon', on: 'saloon', zones: ['vehicle'],
            attended: 16.6.min..16.7.min,
            sets: ['handed-over']
    example 'estate', on: 'estate', zones: ['vehicle'],
            attended: 18.3.min..18.4.min,
            sets: ['handed-over']
}
