// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('cabin-dry-out') {
    title 'Cabin dry-out'
    about 'Dries the cabin by moving warm air; nobody stays with it.'
    family 'cabin'
    revision 1
    worksOn 'cabin'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'fabric-damp', why: 'there is nothing to dry'
    }
    after {
        arrives 'fabric-dry', after: 240.min
    }
    time {
        attended 5.min, 8.min, 15.min
        standing 240.min, why: 'dries 4 to 24 hours; soaked foam up to 48'
    }
    hazards {
        risk 'electricity'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.60
    }
    place {
        equipment 'air mover', 'dehumidifier'
    }
    climate {
        between 18.C, 35.C
    }
    checks {
        confirm 'Moisture meter, or dry tissue under pressure'
        avoid 'Windows shut overnight: mould smell'
    }
    example 'saloon', on: 'saloon',
            attended: 8.6.min..8.7.min, standing: 240.min..240.min
    example 'estate', on: 'estate',
            attended: 9.5.min..9.6.min, standing: 240.min..240.min
}
