// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('compound') {
    title 'Compounding'
    about 'Cuts swirls and scratches by dual-action machine.'
    family 'correction'
    revision 1
    inputs {
        count 'passes', from: 1, to: 3, usual: 1, why: 'how often the whole area is worked'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'measured', why: 'you cannot spend paint you have not counted'
        if (surveyed('paint') == 'clear-over-base' && surveyed('hardness') != 'soft') {
            prefers 'spot-proven', why: 'paint hardness varies more than any list says'
        } else {
            needs 'spot-proven', why: 'soft, single-stage or unknown paint is proven first'
        }
        needs 'decontaminated', 'dry', why: 'bonded grit under a pad scratches the whole panel'
        prefers 'masked', why: 'burnt edges and stained trim; paint is thinnest there'
        refuses 'filmed', why: 'melts or strips the film'
        needs 'cool', 'shade', why: 'a hot or sunny surface dries the product before it has worked'
    }
    after {
        clears 'sanded', 'polished', 'refined'
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'compounded', 'oily', 'dusty'
    }
    time {
        setUp 8.min
        attended 15.min, 21.min, 38.min, per: 'm2', times: passes
    }
    uses {
        item 'cutting-compound', 16.ml, per: 'm2', times: passes
        item 'cutting-pad', 0.12.each, per: 'm2', times: passes
        item 'short-pile-cloth', 1.each, per: 'm2', times: passes
        item 'ppe-allowance', 0.04.each, per: 'm2', times: passes
    }
    hazards {
        from 'cutting-compound'
        risk 'vibration', 6.ms2
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
        equipment 'dual-action polisher, 15 to 21 mm throw'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 2.um, 3.um, 5.um, times: passes
    }
    checks {
        confirm 'Defects out to the agreed grade, after a spot wipe'
        avoid 'Loaded pad'
        avoid 'Section too big'
    }
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 42.min..43.min,
            uses: ['cutting-compound': 24.ml, 'cutting-pad': 0.18.each, 'short-pile-cloth': 1.5.each, 'ppe-allowance': 0.06.each],
            removes: 2.um..5.um,
            sets: ['compounded', 'oily', 'dusty'], clears: ['sanded', 'polished', 'refined', 'panel-wiped', 'finish-checked']
    example 'bonnet of an estate, soft to medium', on: 'estate', zones: ['bonnet'], given: [hardness: 'soft-to-medium'],
            attended: 38.min..39.min,
            uses: ['cutting-compound': 24.ml, 'cutting-pad': 0.18.each, 'short-pile-cloth': 1.5.each, 'ppe-allowance': 0.06.each],
            removes: 2.um..5.um,
            sets: ['compounded', 'oily', 'dusty'], clears: ['sanded', 'polished', 'refined', 'panel-wiped', 'finish-checked']
    example 'bonnet of single-stage paint', on: 'saloon', zones: ['bonnet'], given: [paint: 'single-stage'],
            attended: 42.min..43.min,
            uses: ['cutting-compound': 24.ml, 'cutting-pad': 0.18.each, 'short-pile-cloth': 1.5.each, 'ppe-allowance': 0.06.each],
            removes: 2.um..5.um
}
