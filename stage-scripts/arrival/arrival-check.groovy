// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('arrival-check') {
    title 'Arrival check'
    about 'Agrees with the customer what is there before anything is touched: keys, mileage, lamps, damage, photographs.'
    family 'arrival'
    revision 1
    worksOn 'vehicle'
    after {
        sets 'booked-in'
        // a car that came in on its wheels counts as torqued until a wheel comes off
        sets 'torqued'
    }
    time {
        attended 10.min, 15.min, 30.min
    }
    crew {
        people 1
    }
    place {
        bay 'reception'
        equipment 'camera', 'condition card'
    }
    checks {
        confirm 'The customer has signed the damage diagram'
        confirm 'The locking-nut key is in hand'
        avoid 'Photographs in the wet'
        avoid 'No photograph of the roof'
    }
    example 'a saloon comes in', on: 'saloon', zones: ['vehicle'],
            attended: 16.6.min..16.7.min,
            sets: ['booked-in', 'torqued']
    example 'an estate takes a tenth longer', on: 'estate', zones: ['vehicle'],
            attended: 18.3.min..18.4.min,
            sets: ['booked-in', 'torqued']
}
