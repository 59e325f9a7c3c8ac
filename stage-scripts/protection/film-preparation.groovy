// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('film-preparation') {
    title 'Film preparation'
    about 'Cleans a panel, its edges and backs, to film grade.'
    family 'protection'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'decontaminated', 'finish-checked', 'panel-wiped', why: 'film holds dirt and locks the defect in'
        needs 'seams-dry', why: 'a seam that weeps lifts the edge'
        needs 'still', why: 'draught carries dust'
        refuses 'sanded', why: 'sanding haze is not a finish; one step does not clear it'
        refuses 'masked', why: 'film bridges tape and lifts with it'
    }
    after {
        sets 'film-ready'
    }
    time {
        setUp 10.min
        attended 12.min, 20.min, 35.min, per: 'panel'
    }
    uses {
        item 'panel-wipe-liquid', 40.ml, per: 'panel'
        item 'clay', 3.g, per: 'panel'
        item 'short-pile-cloth', 2.each, per: 'panel'
    }
    hazards {
        from 'panel-wipe-liquid'
        risk 'blades'
        risk 'ignition'
    }
    crew {
        people 1
    }
    place {
        bay 'film'
    }
    climate {
        between 18.C, 25.C
        humidity 40.percent, 60.percent
    }
    checks {
        confirm 'Edges and backs free of lint'
        avoid 'An edge left waxy: it lifts'
    }
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 31.min..32.min,
            uses: ['panel-wipe-liquid': 40.ml, clay: 3.g, 'short-pile-cloth': 2.each],
            sets: ['film-ready']
    example 'front end, four panels', on: 'saloon', zones: ['bonnet', 'front-wing-left', 'front-wing-right', 'front-bumper'],
            attended: 94.min..95.min,
            uses: ['panel-wipe-liquid': 160.ml, clay: 12.g, 'short-pile-cloth': 8.each],
            sets: ['film-ready']
}
