// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('film-fitting') {
    title 'Film fitting'
    about 'Fits protection film to a prepared panel.'
    family 'protection'
    revision 1
    inputs {
        yesNo 'large', usual: false, why: 'bonnet and roof need two people'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'film-ready', why: 'film needs a film-grade panel'
        refuses 'coated', 'waxed', 'sealed', why: 'film will not stick to them; coating goes over film'
        refuses 'glazed', 'oily', 'dressed', why: 'nothing bonds to oil or silicone'
        needs 'still', 'heated', why: 'draught carries dust and cold film cracks'
        refuses 'masked', why: 'film bridges tape and lifts with it'
    }
    after {
        clears 'film-ready', 'dry', 'seams-dry', 'panel-wiped'
        clears 'panel-wiped', reach: 'neighbours'
        sets 'filmed', 'curing', 'wet'
        arrives 'dry', after: 1440.min
        arrives 'seams-dry', after: 1440.min
        arrives 'water-safe', after: 1440.min
    }
    time {
        setUp 30.min
        attended 30.min, 60.min, 120.min, per: 'panel'
    }
    uses {
        item 'protection-film', 1.2.m2, per: 'panel'
        item 'panel-wipe-liquid', 20.ml, per: 'panel'
        item 'ppe-allowance', 0.1.each, per: 'panel'
    }
    hazards {
        from 'panel-wipe-liquid'
        risk 'blades'
        risk 'slip'
    }
    crew {
        people large ? 2 : 1
        helpers 2, takes: 0.60
        skill 'film'
    }
    place {
        bay 'film'
        equipment 'plotter or knife', 'slip and tack sprayers'
    }
    climate {
        between 18.C, 25.C
        humidity 40.percent, 60.percent
    }
    checks {
        confirm 'No lift, silvering or dirt over the agreed count'
        confirm 'Settles 24 to 48 hours'
        avoid 'Knife on paint'
        avoid 'Stretched edges'
    }
    example 'bonnet by two', on: 'saloon', zones: ['bonnet'], with: [large: true],
            attended: 95.min..95.min,
            uses: ['protection-film': 1.2.m2, 'panel-wipe-liquid': 20.ml, 'ppe-allowance': 0.1.each],
            sets: ['filmed', 'curing', 'wet'], clears: ['film-ready', 'dry', 'seams-dry', 'panel-wiped']
    example 'both front wings', on: 'saloon', zones: ['front-wing-left', 'front-wing-right'],
            attended: 160.min..160.min,
            uses: ['protection-film': 2.4.m2, 'panel-wipe-liquid': 40.ml, 'ppe-allowance': 0.2.each],
            sets: ['filmed', 'curing', 'wet'], clears: ['film-ready', 'dry', 'seams-dry', 'panel-wiped']
}
