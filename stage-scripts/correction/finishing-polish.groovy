// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('finishing-polish') {
    title 'Finishing'
    about 'Gives the last gloss.'
    family 'correction'
    revision 1
    inputs {
        count 'passes', from: 1, to: 3, usual: 1, why: 'how often the whole area is worked'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'measured', why: 'you cannot spend paint you have not counted'
        if (surveyed('hardness') == 'soft' || surveyed('paint') == 'single-stage' || surveyed('paint') == 'unknown') {
            needs 'spot-proven', why: 'soft, single-stage or unknown paint is proven first'
        }
        needs 'decontaminated', 'dry', why: 'bonded grit under a pad scratches the whole panel'
        prefers 'masked', why: 'burnt edges and stained trim; paint is thinnest there'
        needs 'polished', why: 'it only refines a polished finish'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
    }
    after {
        // leaves the finish ladder below it as it is
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'refined', 'oily', 'dusty'
    }
    time {
        setUp 8.min
        attended 7.min, 10.min, 17.min, per: 'm2', times: passes
    }
    uses {
        item 'finishing-polish-liquid', 8.ml, per: 'm2', times: passes
        item 'finishing-pad', 0.04.each, per: 'm2', times: passes
        item 'short-pile-cloth', 0.6.each, per: 'm2', times: passes
    }
    hazards {
        from 'finishing-polish-liquid'
        risk 'vibration', 4.ms2
        risk 'noise', 85.dB
        risk 'electricity'
        wear 'ear defenders', 'dust mask'
    }
    crew {
        people 1
        helpers 2, takes: 0.57
        helpers 3, takes: 0.45
        skill 'correction'
    }
    place {
        bay 'lit'
        equipment 'dual-action polisher'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 0.2.um, 0.5.um, 1.um, times: passes
    }
    checks {
        confirm 'No trail in sun-type light'
        avoid 'A dirty pad makes holograms'
    }
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 24.min..24.min,
            uses: ['finishing-polish-liquid': 12.ml, 'finishing-pad': 0.06.each, 'short-pile-cloth': 0.9.each],
            removes: 0.2.um..1.um,
            sets: ['refined', 'oily', 'dusty'], clears: ['panel-wiped', 'finish-checked']
    example 'black bonnet of soft paint', on: 'saloon', zones: ['bonnet'], given: [hardness: 'soft', colour: 'dark'],
            attended: 32.min..32.min,
            uses: ['finishing-polish-liquid': 12.ml, 'finishing-pad': 0.06.each, 'short-pile-cloth': 0.9.each],
            removes: 0.2.um..1.um,
            sets: ['refined', 'oily', 'dusty'], clears: ['panel-wiped', 'finish-checked']
}
