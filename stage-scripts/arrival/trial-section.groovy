// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('trial-section') {
    title 'Trial section'
    about 'Finds the least aggressive method that works on this paint; clays and wipes its own patch.'
    family 'arrival'
    revision 1
    inputs {
        choice 'proves', from: ['zone', 'vehicle'], usual: 'zone', why: 'what the trial stands for: its own zone, or all paint of one kind on the vehicle'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'washed', 'dry', why: 'grit under a pad scratches'
        needs 'measured', why: 'paint that has not been counted is not spent'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
    }
    after {
        if (proves == 'vehicle') {
            sets 'spot-proven', reach: 'vehicle'
        } else {
            sets 'spot-proven'
        }
        clears 'panel-wiped'
        sets 'oily'         // a spot, not the panel: polished it is by the work that follows
    }
    time {
        attended 10.min, 16.min, 32.min, per: 'spot'
    }
    uses {
        item 'medium-polish', 5.ml, per: 'spot'
        item 'cutting-compound', 5.ml, per: 'spot'
        item 'panel-wipe-liquid', 10.ml, per: 'spot'
        item 'polishing-pad', 0.05.each, per: 'spot'
    }
    hazards {
        from 'medium-polish'
        from 'cutting-compound'
        from 'panel-wipe-liquid'
        risk 'vibration', 5.ms2
        risk 'dust'
        risk 'ignition'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'polisher', 'pads', 'inspection lamps'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 1.um, 2.um, 5.um
    }
    checks {
        confirm 'Method, minutes and result photographed after a wipe'
        avoid 'Judged before wiping'
        avoid 'An easy panel chosen'
    }
    example 'one spot on the bonnet', on: 'saloon', zones: ['bonnet'], drivers: [spot: 1],
            attended: 17.6.min..17.7.min,
            uses: ['medium-polish': 5.ml, 'cutting-compound': 5.ml, 'panel-wipe-liquid': 10.ml, 'polishing-pad': 0.05.each],
            removes: 1.um..5.um,
            sets: ['spot-proven', 'oily'], clears: ['panel-wiped']
    example 'two spots on hard paint', on: 'saloon', zones: ['bonnet'], with: [proves: 'vehicle'], given: [hardness: 'hard'], drivers: [spot: 2],
            attended: 45.min..46.min,
            uses: ['medium-polish': 10.ml, 'cutting-compound': 10.ml, 'panel-wipe-liquid': 20.ml, 'polishing-pad': 0.1.each],
            removes: 1.um..5.um,
            sets: ['spot-proven', 'oily'], clears: ['panel-wiped']
}
