// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('glass-coating') {
    title 'Glass coating'
    about 'Coats the glass pane by pane.'
    family 'glass'
    revision 1
    inputs {
        count 'layers', from: 1, to: 2, usual: 1, why: 'a windscreen may take two'
    }
    worksOn 'glass'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'clayed', 'dry', why: 'it does not key on bonded dirt'
        needs 'panel-wiped', why: 'it does not key on oil'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        refuses 'masked', why: 'coating bridges tape and tears'
    }
    after {
        clears 'panel-wiped'
        sets 'coated', 'curing'
        arrives 'water-safe', after: 180.min
    }
    time {
        attended 5.min, 8.min, 15.min, per: 'pane', times: layers
        standing 2.min, why: 'flashes in 2 to 10 minutes'
    }
    uses {
        item 'glass-coating-liquid', 4.ml, per: 'pane', times: layers
        item 'panel-wipe-liquid', 15.ml, per: 'pane'
    }
    hazards {
        from 'glass-coating-liquid'
        from 'panel-wipe-liquid'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
    }
    place {
        bay 'indoors'
    }
    climate {
        between 15.C, 25.C
        humidity 40.percent, 65.percent
    }
    checks {
        confirm 'No haze in the sweep of the wipers'
        avoid 'Wipers run within 3 hours'
    }
    example 'six panes', on: 'saloon',
            attended: 52.min..52.min, standing: 2.min..2.min,
            uses: ['glass-coating-liquid': 24.ml, 'panel-wipe-liquid': 90.ml],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
    example 'windscreen, two layers', on: 'saloon', zones: ['windscreen'], with: [layers: 2],
            attended: 17.3.min..17.4.min, standing: 2.min..2.min,
            uses: ['glass-coating-liquid': 8.ml, 'panel-wipe-liquid': 15.ml],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
}
