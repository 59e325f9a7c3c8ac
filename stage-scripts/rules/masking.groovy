// Tape and trims. Order and waits: common practice, no source; other figures from memory.
rule('tape-over-48-hours') {
    title 'Tape on paint over 48 hours'
    reason 'adhesive prints into paint'
    at families: ['sanding', 'correction', 'glass', 'protection'], stages: ['de-mask']
    warns { sinceSet('masked') > 48.h }
}

rule('no-tape-on-fresh-work') {
    title 'No tape on a coating, a touch-in or proofing under 24 hours'
    reason 'it lifts or prints what has not hardened'
    at stages: ['tape-up']
    forbids { sinceSet('coated') < 24.h || sinceSet('touched-in') < 24.h || sinceSet('proofed') < 24.h }
}

rule('no-tape-on-fresh-paint') {
    title 'No tape on a repaint under 7 days'
    reason 'it lifts or prints it'
    at stages: ['tape-up'], surfaces: ['paint']
    forbids { surveyed('repainted-days') != null && surveyed('repainted-days') + step.day < 7 }
}

rule('no-tape-on-flaking-paint') {
    title 'No tape on flaking paint'
    reason 'the paint comes off with it'
    at stages: ['tape-up'], surfaces: ['paint']
    forbids { surveyed('flaking') }
}

rule('tape-off-before-the-last-wipe') {
    title 'Tape comes off before the last panel wipe'
    reason 'tape lines hold dust and residue'
    at stages: ['sealant', 'ceramic-coating', 'film-preparation']
    forbids { since('panel-wipe') > since('de-mask') }
}

rule('no-tape-beside-coating') {
    title 'Tape right beside a coating or film'
    reason 'the layer runs onto the tape, and tears or lifts when it comes off'
    // on its own zone the stage refuses tape itself
    at stages: ['ceramic-coating', 'film-fitting']
    warns { holds('masked', near: true) && !holds('masked') }
}

rule('badges-before-the-coating') {
    title 'Stuck-on badges go back on wiped, bare paint'
    reason 'their tape will not hold on a coating'
    at stages: ['de-mask']
    forbids { input('refits') == 'stuck-on' && (holds('coated', near: true) || !holds('panel-wiped', near: true)) }
}

rule('clips-after-the-coating') {
    title 'Clip-on trims go back two hours after the last layer'
    reason 'the coating must run under the edges of the clips'
    at stages: ['de-mask']
    forbids {
        input('refits') == 'clip-on'
                && (next('ceramic-coating', anywhere: true) != null || since('ceramic-coating', near: true) < 2.h)
    }
}
