// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('refit-wheels') {
    title 'Refit wheels and torque'
    about 'Refits the wheels, torques them, and initials it.'
    family 'wheels'
    revision 1
    worksOn 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'wheels-off', why: 'there is nothing to refit'
        needs 'dry', why: 'a wet face settles and loosens'
    }
    after {
        clears 'wheels-off'
        sets 'torqued'
    }
    time {
        attended 3.min, 5.min, 9.min, per: 'wheel'
    }
    uses {
        item 'ppe-allowance', 0.05.each, per: 'wheel'
    }
    hazards {
        risk 'lifting'
        wear 'safety shoes'
    }
    crew {
        people 1
        checker()
    }
    place {
        bay 'flat'
        equipment 'torque wrench', 'lift or jack and stands'
    }
    checks {
        confirm 'Torque ticked by two people'
        avoid 'Grease on the faces'
        avoid 'No note to torque again at 50 to 100 km'
    }
    example 'four wheels', on: 'saloon',
            attended: 21.min..22.min,
            uses: ['ppe-allowance': 0.2.each],
            sets: ['torqued'], clears: ['wheels-off']
    example 'motorcycle, two wheels', on: 'motorcycle',
            attended: 10.6.min..10.7.min,
            uses: ['ppe-allowance': 0.1.each],
            sets: ['torqued'], clears: ['wheels-off']
}
