// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('tar-removal') {
    title 'Tar and glue removal'
    about 'Dissolves tar and glue spot by spot.'
    family 'decontamination'
    revision 1
    inputs {
        choice 'load', from: ['light', 'moderate', 'heavy'], usual: 'moderate', why: 'how much tar there is'
    }
    worksOn 'paint', 'wheel'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', why: 'grit moves under the cloth'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'ventilated', why: 'the vapour is flammable and makes dizzy'
        refuses 'live', why: 'two products on one zone are an unknown mixture'
    }
    after {
        clears 'rinsed', 'waxed', 'sealed', 'panel-wiped'
        sets 'tar-clear', 'live'
    }
    time {
        attended 6.min, 12.min, 30.min
        standing 1.min, 3.min, why: 'solvent left on softens paint'
    }
    uses {
        item 'tar-solvent', load == 'light' ? 100.ml : load == 'heavy' ? 250.ml : 150.ml
        item 'short-pile-cloth', 1.each
    }
    hazards {
        from 'tar-solvent'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
        helpers 2, takes: 0.60
        helpers 3, takes: 0.50
    }
    place {
        bay 'wash'
        equipment 'cloths'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'No spots under a fingertip in a bag'
        avoid 'On film edges, fresh paint or lamps'
    }
    example 'saloon', on: 'saloon',
            attended: 14.min..14.min, standing: 1.min..1.min,
            uses: ['tar-solvent': 150.ml, 'short-pile-cloth': 1.each],
            sets: ['tar-clear', 'live'], clears: ['rinsed', 'waxed', 'sealed', 'panel-wiped']
    example 'heavy tar on a van', on: 'medium-van', with: [load: 'heavy'],
            attended: 18.2.min..18.2.min, standing: 1.min..1.min,
            uses: ['tar-solvent': 325.ml, 'short-pile-cloth': 1.3.each],
            sets: ['tar-clear', 'live'], clears: ['rinsed', 'waxed', 'sealed', 'panel-wiped']
}
