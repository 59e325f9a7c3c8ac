// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('machine-sand') {
    title 'Machine wet sand'
    about 'Levels a whole panel, P1500 to P2000.'
    family 'sanding'
    revision 1
    inputs {
        choice 'grit', from: ['P1500', 'P2000'], usual: 'P2000', why: 'the coarser one only where the finer does not level'
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
        setUp 10.min
        attended 16.min, 22.min, 40.min, per: 'm2'
    }
    uses {
        item 'abrasive-disc', 2.5.each, per: 'm2'
        item 'masking-tape', 0.1.each, per: 'm2'
    }
    hazards {
        risk 'vibration', 4.5.ms2
        risk 'dust'
        risk 'slip'
        risk 'electricity'
    }
    crew {
        people 1
        helpers 2, takes: 0.57
        helpers 3, takes: 0.45
        skill 'correction'
    }
    place {
        bay 'lit'
        equipment 'orbital sander, 3 to 5 mm', 'interface pad'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 4.um, 7.um, 12.um
    }
    checks {
        confirm 'Uniform scratch, slurry milky and not coloured'
        if (grit == 'P1500') {
            confirm 'P1500 marks refined with P3000 before any compound'
        }
        avoid 'Factory clear without a layer gauge'
    }
    example 'roof of a saloon', on: 'saloon', zones: ['roof'],
            attended: 48.min..49.min,
            uses: ['abrasive-disc': 4.each, 'masking-tape': 0.16.each],
            removes: 4.um..12.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'polished', 'refined', 'panel-wiped', 'finish-checked']
    example 'bonnet, P1500, hard paint', on: 'saloon', zones: ['bonnet'], with: [grit: 'P1500'], given: [hardness: 'hard'],
            attended: 56.min..57.min,
            uses: ['abrasive-disc': 3.75.each, 'masking-tape': 0.15.each],
            removes: 4.um..12.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'polished', 'refined', 'panel-wiped', 'finish-checked']
}
