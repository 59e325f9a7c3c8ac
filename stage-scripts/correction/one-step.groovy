// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('one-step') {
    title 'One-step enhancement'
    about 'Improves the finish in one pass; not a correction.'
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
        clears 'compounded', 'refined'
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'polished', 'oily', 'dusty'
    }
    time {
        setUp 8.min
        attended 10.min, 14.min, 24.min, per: 'm2', times: passes
    }
    uses {
        item 'medium-polish', 11.ml, per: 'm2', times: passes
        item 'polishing-pad', 0.08.each, per: 'm2', times: passes
        item 'short-pile-cloth', 0.8.each, per: 'm2', times: passes
    }
    hazards {
        from 'medium-polish'
        risk 'vibration', 5.ms2
        risk 'noise', 85.dB
        risk 'dust'
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
        removes 1.um, 2.um, 3.um, times: passes
    }
    checks {
        confirm 'Agreed improvement after a spot wipe'
        avoid 'Promised as correction'
    }
    example 'all paint of a saloon', on: 'saloon',
            attended: 211.min..212.min,
            uses: ['medium-polish': 149.16.ml, 'polishing-pad': 1.0848.each, 'short-pile-cloth': 10.848.each],
            removes: 1.um..3.um,
            sets: ['polished', 'oily', 'dusty'], clears: ['compounded', 'refined', 'panel-wiped', 'finish-checked']
    example 'all paint of an estate, soft to medium', on: 'estate', given: [hardness: 'soft-to-medium'],
            attended: 205.min..206.min,
            uses: ['medium-polish': 160.6.ml, 'polishing-pad': 1.168.each, 'short-pile-cloth': 11.68.each],
            removes: 1.um..3.um,
            sets: ['polished', 'oily', 'dusty'], clears: ['compounded', 'refined', 'panel-wiped', 'finish-checked']
    example 'bonnet of single-stage paint', on: 'saloon', zones: ['bonnet'], given: [paint: 'single-stage'],
            attended: 30.min..31.min,
            uses: ['medium-polish': 16.5.ml, 'polishing-pad': 0.12.each, 'short-pile-cloth': 1.2.each],
            removes: 1.um..3.um
}
