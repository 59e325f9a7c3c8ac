// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('panel-wipe') {
    title 'Panel wipe'
    about 'Takes oils off, to inspect or to bond.'
    family 'correction'
    revision 1
    inputs {
        count 'wipes', from: 1, to: 3, usual: 1, why: 'oily finishes take two'
    }
    worksOn 'paint', 'glass', 'wheel', 'trim'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'dry', why: 'water keeps the wipe off the oils'
        needs 'cool', 'ventilated', why: 'highly flammable vapour'
        refuses 'dusty', why: 'dust under the cloth scratches'
        refuses 'loose-soil', why: 'grit under a cloth makes the swirls we are paid to remove'
    }
    after {
        clears 'oily', 'glazed', 'waxed'
        sets 'panel-wiped'
    }
    time {
        setUp 2.min
        attended 0.7.min, 1.0.min, 1.8.min, per: 'm2', times: wipes
        standing 2.min, why: 'the solvent flashes off in 2 to 5 minutes'
    }
    uses {
        item 'panel-wipe-liquid', 18.ml, per: 'm2', times: wipes
        item 'short-pile-cloth', 0.5.each, per: 'm2', times: wipes
    }
    hazards {
        from 'panel-wipe-liquid'
        risk 'ignition'
        risk 'harmful-air'
        keepApart 'ignition source', why: 'flame, heater or charger lights the vapour'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'No smear, no rainbow'
        avoid 'One cloth'
        avoid 'Near a lamp'
        avoid 'On soft fresh paint'
    }
    example 'paint of a saloon', on: 'saloon', zones: ['surface:paint'],
            attended: 16.6.min..16.7.min, standing: 2.min..2.min,
            uses: ['panel-wipe-liquid': 244.08.ml, 'short-pile-cloth': 6.78.each],
            sets: ['panel-wiped'], clears: ['oily', 'glazed', 'waxed']
    example 'bonnet wiped twice', on: 'saloon', zones: ['bonnet'], with: [wipes: 2],
            attended: 5.2.min..5.3.min, standing: 2.min..2.min,
            uses: ['panel-wipe-liquid': 54.ml, 'short-pile-cloth': 1.5.each],
            sets: ['panel-wiped'], clears: ['oily', 'glazed', 'waxed']
}
