// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('spot-sand') {
    title 'Spot wet sand'
    about 'Levels a defect by hand, P2000 then P3000.'
    family 'sanding'
    revision 1
    inputs {
        count 'passes', from: 1, to: 2, usual: 1, why: 'a run takes a second pass'
    }
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'measured', why: 'you cannot spend paint you have not counted'
        needs 'spot-proven', why: 'paint hardness varies more than any list says'
        needs 'decontaminated', 'dry', why: 'bonded grit under a pad scratches the whole panel'
        needs 'masked', why: 'edges and body lines are thin: tape them or they burn'
        needs 'cool', why: 'warm paint clogs and drags'
        refuses 'filmed', why: 'melts or strips the film'
    }
    after {
        clears 'seams-dry', 'polished', 'refined'
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'sanded', 'dusty'
    }
    time {
        setUp 6.min
        attended 6.min, 10.min, 20.min, per: 'spot', times: passes
    }
    uses {
        item 'abrasive-disc', 1.each, per: 'spot', times: passes
        item 'masking-tape', 0.05.each, per: 'spot'
    }
    hazards {
        risk 'dust'
        risk 'slip'
    }
    crew {
        people 1
    }
    place {
        bay 'lit'
        equipment 'small hard block'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 3.um, 6.um, 10.um, times: passes
    }
    checks {
        confirm 'Even flat haze, defect gone'
        avoid 'Finger pressure'
        avoid 'No edge tape'
    }
    example 'one run', on: 'saloon', zones: ['bonnet'], drivers: [spot: 1],
            attended: 17.min..17.min,
            uses: ['abrasive-disc': 1.each, 'masking-tape': 0.05.each],
            removes: 3.um..10.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'polished', 'refined', 'panel-wiped', 'finish-checked']
    example 'three scratches in hard paint', on: 'saloon', zones: ['front-door-right'], given: [hardness: 'hard'], drivers: [spot: 3],
            attended: 48.min..49.min,
            uses: ['abrasive-disc': 3.each, 'masking-tape': 0.15.each],
            removes: 3.um..10.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'polished', 'refined', 'panel-wiped', 'finish-checked']
}
