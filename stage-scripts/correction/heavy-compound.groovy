// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('heavy-compound') {
    title 'Heavy compounding'
    about 'Cuts deep defects by wool pad or forced rotation.'
    family 'correction'
    revision 1
    inputs {
        count 'passes', from: 1, to: 3, usual: 1, why: 'how often the whole area is worked'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'measured', why: 'you cannot spend paint you have not counted'
        needs 'spot-proven', why: 'paint hardness varies more than any list says'
        needs 'decontaminated', 'dry', why: 'bonded grit under a pad scratches the whole panel'
        needs 'masked', why: 'edges and body lines are thin: tape them or they burn'
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
        attended 22.min, 30.min, 52.min, per: 'm2', times: passes
    }
    uses {
        item 'cutting-compound', 20.ml, per: 'm2', times: passes
        item 'cutting-pad', 0.16.each, per: 'm2', times: passes
        item 'short-pile-cloth', 1.each, per: 'm2', times: passes
        item 'ppe-allowance', 0.05.each, per: 'm2', times: passes
    }
    hazards {
        from 'cutting-compound'
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
        equipment 'rotary or forced-rotation polisher', 'wool pads'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 3.um, 5.um, 8.um, times: passes
    }
    checks {
        confirm 'Defects out to the agreed grade, after a spot wipe'
        avoid 'Heat on edges and plastics'
        avoid 'No change of pad'
    }
    example 'bonnet', on: 'saloon', zones: ['bonnet'],
            attended: 56.min..57.min,
            uses: ['cutting-compound': 30.ml, 'cutting-pad': 0.24.each, 'short-pile-cloth': 1.5.each, 'ppe-allowance': 0.075.each],
            removes: 3.um..8.um,
            sets: ['compounded', 'oily', 'dusty'], clears: ['sanded', 'polished', 'refined', 'panel-wiped', 'finish-checked']
    example 'bonnet of hard paint, two passes', on: 'saloon', zones: ['bonnet'], with: [passes: 2], given: [hardness: 'hard'],
            attended: 134.min..135.min,
            uses: ['cutting-compound': 60.ml, 'cutting-pad': 0.48.each, 'short-pile-cloth': 3.each, 'ppe-allowance': 0.15.each],
            removes: 6.um..16.um,
            sets: ['compounded', 'oily', 'dusty'], clears: ['sanded', 'polished', 'refined', 'panel-wiped', 'finish-checked']
}
