// How long it stands depends on the product: read its label. The figures here are examples, not advice.
stage('iron-removal') {
    title 'Iron fallout removal'
    about 'Dissolves iron specks that washing leaves'
    family 'decontamination'
    revision 3
    inputs {
        choice 'load', from: ['light', 'moderate', 'heavy'], usual: 'moderate', why: 'how many specks the hand feels'
        count 'passes', from: 1, to: 3, usual: 1
    }
    worksOn 'paint', 'glass'
    before {
        needs 'washed', 'cool', why: 'grit scratches, and a hot panel dries the liquid'
        prefers 'tar-clear'
    }
    after {
        sets 'iron-clear', 'wet'
        clears 'dry'
    }
    time {
        attended 3.min, 4.min, 8.min
        attended 0.6.min, 0.8.min, 1.4.min, per: 'm2', times: passes
        if (load == 'heavy') {
            attended 2.min, 3.min, 5.min, per: 'm2'
        }
        standing 3.min, 7.min, why: 'must not dry on the surface'
    }
    uses { item 'iron-remover', 70.ml, per: 'm2', times: passes }
    hazards {
        from 'iron-remover'
        wear 'gloves', 'goggles'
        keepApart 'acid', why: 'gives off a toxic gas'
    }
    checks {
        confirm 'No coloured run-off from seams after the last rinse'
        avoid 'Letting it dry on hot panels'
    }
    example 'two passes', on: 'saloon', with: [passes: 2], uses: ['iron-remover': 1.4.l]
}
