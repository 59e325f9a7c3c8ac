// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('ceramic-coating') {
    title 'Ceramic coating, one layer'
    about 'Lays one layer of coating; a further layer is a further step.'
    family 'protection'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needsAny 'panel-wiped', 'coated', why: 'it bonds to bare paint or to its own fresh layer'
        needs 'finish-checked', why: 'the coating locks the defect in'
        needs 'seams-dry', why: 'a seam that weeps marks the layer'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
        needs 'lit', 'still', 'heated', why: 'it wants light to level, still air and a steady temperature'
        refuses 'masked', why: 'coating bridges tape and tears'
        refuses 'glazed', 'waxed', 'sealed', 'oily', 'dressed', why: 'nothing bonds to oil, wax or silicone'
        refuses 'sanded', why: 'sanding haze is not a finish; one step does not clear it'
    }
    after {
        clears 'panel-wiped'
        sets 'coated', 'curing'
        arrives 'water-safe', after: 720.min
    }
    time {
        setUp 20.min
        attended 4.min, 6.5.min, 11.min, per: 'm2'
        standing 45.min, why: 'flashes 1 to 5 minutes a section; 45 to 180 minutes to the next layer'
    }
    uses {
        item 'coating-liquid', 3.2.ml, per: 'm2'
        item 'short-pile-cloth', 1.each, per: 'm2'
        item 'ppe-allowance', 0.05.each, per: 'm2'
    }
    hazards {
        from 'coating-liquid'
        risk 'ignition'
        risk 'harmful-air'
    }
    crew {
        people 1
        helpers 2, takes: 0.70
        checker()
        skill 'coating'
    }
    place {
        bay 'clean'
        equipment 'inspection lamps', 'timers'
    }
    climate {
        between 15.C, 25.C
        humidity 40.percent, 65.percent
    }
    checks {
        confirm 'No high spot, two lamps, two people'
        confirm 'Batch, temperature and humidity logged'
        avoid 'Flash missed'
        avoid 'Cloth used again'
        avoid 'A damp seam weeps'
    }
    example 'paint of a saloon', on: 'saloon',
            attended: 112.min..113.min, standing: 45.min..45.min,
            uses: ['coating-liquid': 43.392.ml, 'short-pile-cloth': 13.56.each, 'ppe-allowance': 0.678.each],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 30.min..31.min, standing: 45.min..45.min,
            uses: ['coating-liquid': 4.8.ml, 'short-pile-cloth': 1.5.each, 'ppe-allowance': 0.075.each],
            sets: ['coated', 'curing'], clears: ['panel-wiped']
}
