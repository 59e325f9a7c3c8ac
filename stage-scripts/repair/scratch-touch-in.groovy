// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('scratch-touch-in') {
    title 'Scratch and edge touch-in'
    about 'Fills a scratch or seals a lacquer edge by brush.'
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
        attended 10.min, 20.min, 40.min, per: 'spot'
        standing cold ? 24.h : 12.h, why: 'soft touch-in drags out when it is levelled'
    }
    uses {
        item 'touch-in-paint', 1.5.ml, per: 'spot'
        item 'panel-wipe-liquid', 5.ml, per: 'spot'
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
        confirm 'Edge sealed, proud'
        avoid 'Levelled too soon'
    }
    example 'one scratch', on: 'saloon', zones: ['front-door-left'], drivers: [spot: 1],
            attended: 21.min..22.min, standing: 720.min..720.min,
            uses: ['touch-in-paint': 1.5.ml, 'panel-wipe-liquid': 5.ml],
            sets: ['touched-in'], clears: ['panel-wiped', 'finish-checked']
    example 'three scratches in a cold workshop', on: 'saloon', zones: ['front-door-left'], with: [cold: true], drivers: [spot: 3],
            attended: 65.min..65.min, standing: 1440.min..1440.min,
            uses: ['touch-in-paint': 4.5.ml, 'panel-wipe-liquid': 15.ml],
            sets: ['touched-in'], clears: ['panel-wiped', 'finish-checked']
}
