// figures: from memory, tune to your own records; waits and climate: common practice, no source
stage('refine-sand') {
    title 'Refine sanding'
    about 'Takes the sanding marks down to P3000.'
    family 'sanding'
    revision 1
    worksOn 'paint'
    before {
        needs 'booked-in', why: 'nothing is done before the damage is agreed'
        needs 'measured', why: 'you cannot spend paint you have not counted'
        needs 'spot-proven', why: 'paint hardness varies more than any list says'
        needs 'sanded', 'dry', why: 'it follows a coarser grit'
        needs 'decontaminated', why: 'bonded grit under a pad scratches the whole panel'
        needs 'masked', why: 'edges and body lines are thin: tape them or they burn'
        needs 'cool', why: 'warm paint clogs and drags'
        refuses 'filmed', why: 'melts or strips the film'
    }
    after {
        clears 'seams-dry'
        clears 'panel-wiped', 'finish-checked', reach: 'vehicle'
        sets 'sanded', 'dusty'
    }
    time {
        setUp 6.min
        attended 9.min, 13.min, 22.min, per: 'm2'
    }
    uses {
        item 'abrasive-disc', 2.5.each, per: 'm2'
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
        equipment 'orbital sander, 3 to 5 mm', 'foam discs'
    }
    climate {
        between 10.C, 30.C
    }
    film {
        removes 1.um, 2.um, 3.um
    }
    checks {
        confirm 'No P1500 scratch under the lamp'
        avoid 'A grit skipped'
    }
    example 'roof of a saloon', on: 'saloon', zones: ['roof'],
            attended: 28.min..29.min,
            uses: ['abrasive-disc': 4.each],
            removes: 1.um..3.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'panel-wiped', 'finish-checked']
    example 'bonnet of soft paint', on: 'saloon', zones: ['bonnet'], given: [hardness: 'soft'],
            attended: 23.min..24.min,
            uses: ['abrasive-disc': 3.75.each],
            removes: 1.um..3.um,
            sets: ['sanded', 'dusty'], clears: ['seams-dry', 'panel-wiped', 'finish-checked']
}
