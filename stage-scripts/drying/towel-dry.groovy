// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('towel-dry') {
    title 'Towel dry'
    about 'Dries the open surfaces by towel.'
    family 'drying'
    revision 1
    worksOn 'paint', 'glass', 'wheel', 'arch', 'trim', 'lamp', 'bright-metal', 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'rinsed', 'wet', why: 'a towel would rub shampoo or iron remover into the paint'
    }
    after {
        clears 'wet'
        sets 'dry'
    }
    time {
        attended 0.4.min, 0.6.min, 1.1.min, per: 'm2'
    }
    uses {
        item 'drying-towel', 0.001.each, per: 'm2'
    }
    hazards {
        risk 'slip'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'indoors'
        equipment 'drying towels'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'No standing water'
        avoid 'Dragging on an unrinsed panel'
    }
    example 'paint and glass of a saloon', on: 'saloon', zones: ['surface:paint', 'surface:glass'],
            attended: 11.min..11.1.min,
            uses: ['drying-towel': 0.01696.each],
            sets: ['dry'], clears: ['wet']
    example 'estate', on: 'estate', zones: ['surface:paint', 'surface:glass'],
            attended: 12.min..12.1.min,
            uses: ['drying-towel': 0.0185.each],
            sets: ['dry'], clears: ['wet']
}
