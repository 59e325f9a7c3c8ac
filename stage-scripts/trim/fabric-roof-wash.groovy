// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('fabric-roof-wash') {
    title 'Fabric roof wash'
    about 'Vacuums, brush-washes and rinses a fabric roof.'
    family 'trim'
    revision 1
    worksOn 'fabric-roof'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'drained', why: 'wash water and chemistry must reach a permitted drain'
        refuses 'curing', why: 'water inside the no-water clock marks a soft coating'
    }
    after {
        clears 'loose-soil', 'proofed', 'panel-wiped', 'live'
        clears 'seams-dry', 'panel-wiped', reach: 'neighbours'
        sets 'washed', 'rinsed', 'wet'
        arrives 'dry', after: 240.min
    }
    time {
        attended 12.min, 20.min, 35.min, per: 'm2'
    }
    uses {
        item 'roof-care', 150.ml, per: 'm2'
    }
    hazards {
        from 'roof-care'
        risk 'slip'
    }
    crew {
        people 1
    }
    place {
        bay 'wash'
        equipment 'soft brush', 'vacuum'
    }
    climate {
        between 5.C, 30.C
    }
    checks {
        confirm 'Rinses clear'
        confirm 'Frame and seals wiped'
        avoid 'Hard brush'
        avoid 'Folded wet'
    }
    example 'convertible', on: 'convertible',
            attended: 50.min..51.min,
            uses: ['roof-care': 360.ml],
            sets: ['washed', 'rinsed', 'wet'], clears: ['loose-soil', 'proofed', 'panel-wiped', 'live', 'seams-dry']
    example 'convertible with heavy green growth', on: 'convertible', given: [access: 'vents'],
            attended: 60.min..61.min,
            uses: ['roof-care': 360.ml],
            sets: ['washed', 'rinsed', 'wet'], clears: ['loose-soil', 'proofed', 'panel-wiped', 'live', 'seams-dry']
}
