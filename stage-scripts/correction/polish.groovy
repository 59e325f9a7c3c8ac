// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('polish') {
    title 'Polishing'
    about 'Takes compounding haze out.'
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
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
    }
    after {
        clears 'compounded'
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'polished', 'oily', 'dusty'
    }
    time {
        setUp 8.min
        attended 10.min, 14.min, 23.min, per: 'm2', times: passes
    }
    uses {
        item 'medium-polish', 11.ml, per: 'm2', times: passes
        item 'polishing-pad', 0.07.each, per: 'm2', times: passes
        item 'short-pile-cloth', 0.8.each, per: 'm2', times: passes
    }
    hazards {
        from 'medium-polish'
        risk 'vibration', 5.ms2
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
        removes 0.5.um, 1.um, 2.um, times: passes
    }
    checks {
        confirm 'No haze under a point light'
        avoid 'The cutting pad still on'
    }
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 30.min..31.min,
            uses: ['medium-polish': 16.5.ml, 'polishing-pad': 0.105.each, 'short-pile-cloth': 1.2.each],
            removes: 0.5.um..2.um,
            sets: ['polished', 'oily', 'dusty'], clears: ['compounded', 'panel-wiped', 'finish-checked']
    example 'bonnet of hard paint', on: 'saloon', zones: ['bonnet'], given: [hardness: 'hard'],
            attended: 36.min..37.min,
            uses: ['medium-polish': 16.5.ml, 'polishing-pad': 0.105.each, 'short-pile-cloth': 1.2.each],
            removes: 0.5.um..2.um,
            sets: ['polished', 'oily', 'dusty'], clears: ['compounded', 'panel-wiped', 'finish-checked']
    example 'bonnet of single-stage paint', on: 'saloon', zones: ['bonnet'], given: [paint: 'single-stage'],
            attended: 30.min..31.min,
            uses: ['medium-polish': 16.5.ml, 'polishing-pad': 0.105.each, 'short-pile-cloth': 1.2.each],
            removes: 0.5.um..2.um
}
