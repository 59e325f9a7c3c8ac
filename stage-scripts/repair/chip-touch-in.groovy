// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('chip-touch-in') {
    title 'Stone-chip touch-in'
    about 'Fills stone chips with base and lacquer by fine tip.'
    family 'repair'
    revision 1
    inputs {
        yesNo 'cold', usual: false, why: 'workshop below 15 °C: it hardens in 24 hours instead of 12'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'decontaminated', 'dry', why: 'paint does not hold on dirt or damp'
        needs 'panel-wiped', why: 'paint does not hold on oil'
        needs 'cool', why: 'a hot panel skins it over'
        needs 'ventilated', why: 'the solvent is flammable'
    }
    after {
        clears 'panel-wiped', 'finish-checked'
        sets 'touched-in'
    }
    time {
        attended 3.min, 6.min, 12.min, per: 'chip'
        standing cold ? 24.h : 12.h, why: 'soft touch-in drags out when it is levelled'
    }
    uses {
        item 'touch-in-paint', 0.3.ml, per: 'chip'
        item 'panel-wipe-liquid', 2.ml, per: 'chip'
    }
    hazards {
        from 'touch-in-paint'
        from 'panel-wipe-liquid'
        risk 'ignition'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'fine tips', 'loupe'
    }
    climate {
        between 10.C, 30.C
    }
    checks {
        confirm 'Slightly proud, hard to the nail'
        confirm '30 to 60 minutes between coats'
        avoid 'Rust not treated'
        avoid 'One fat blob'
    }
    example 'chips of a whole car', on: 'saloon', zones: ['bonnet', 'front-bumper'], drivers: [chip: 18],
            attended: 117.min..117.min, standing: 720.min..720.min,
            uses: ['touch-in-paint': 5.4.ml, 'panel-wipe-liquid': 36.ml],
            sets: ['touched-in'], clears: ['panel-wiped', 'finish-checked']
    example 'twelve chips in a cold workshop', on: 'saloon', zones: ['bonnet'], with: [cold: true], drivers: [chip: 12],
            attended: 78.min..78.min, standing: 1440.min..1440.min,
            uses: ['touch-in-paint': 3.6.ml, 'panel-wipe-liquid': 24.ml],
            sets: ['touched-in'], clears: ['panel-wiped', 'finish-checked']
}
