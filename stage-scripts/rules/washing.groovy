// Washing, decontamination and drying. Order and waits: common practice, no source; other figures from memory.
def machine = ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish']

rule('live-product-comes-off-first') {
    title 'A live product comes off before anything else'
    reason 'dried chemistry stains, etches, and takes longer to shift than the job'
    at families: ['masking', 'repair', 'sanding', 'correction', 'trim', 'protection']
    forbids { holds('live') }
}

rule('one-live-product-at-a-time') {
    title 'Never two live products on one zone'
    reason 'an unknown mixture with an unknown dwell; foam laid over iron remover is known to be safe'
    at stages: ['alkaline-pre-wash', 'snow-foam', 'contact-wash', 'shuts-and-seams', 'iron-removal', 'tar-removal', 'scale-removal', 'strip-wash', 'claying']
    // foam over iron remover is the one pair that this shop allows
    forbids {
        holds('live') && last('wash', 'wheels', 'decontamination') != step.stage
                && !(step.stage == 'snow-foam' && last('wash', 'wheels', 'decontamination') == 'iron-removal')
    }
}

rule('wheels-before-the-body') {
    title 'Wheels, arches and engine bay before the body is washed'
    reason 'splash and sling soil clean panels again'
    at stages: ['wheels-on-car', 'wheels-off-clean', 'arches-and-liners', 'engine-bay-clean']
    warns { since('contact-wash', anywhere: true) != null && !later('contact-wash', anywhere: true) }
}

rule('shuts-before-the-body') {
    title 'Shuts and seams before the body is washed'
    reason 'dirty water runs out of the shuts over washed paint'
    at stages: ['shuts-and-seams']
    warns { since('contact-wash') != null && !later('contact-wash') }
}

rule('roof-before-what-is-below') {
    title 'The roof is washed first'
    reason 'dirty water runs down over panels that are washed already; within one step the wash goes from top to bottom by itself'
    at stages: ['contact-wash'], surfaces: ['paint']
    warns { zone.id == 'roof' && count('contact-wash') == 0 && since('contact-wash', anywhere: true) != null }
}

rule('keep-what-protects') {
    title 'Strong alkali on protection that stays'
    reason 'it shortens or strips what protects the paint, and the plan puts nothing on again'
    at stages: ['alkaline-pre-wash', 'strip-wash']
    warns { (holds('waxed') || holds('sealed') || holds('coated')) && !later('wax', 'sealant', 'ceramic-coating') }
}

rule('no-clay-after-the-finish') {
    title 'No clay after the last machine work'
    reason 'clay mars finished paint'
    at stages: ['claying'], surfaces: ['paint']
    forbids { since(machine) != null && !later(machine) }
}

rule('no-wetting-of-tape') {
    title 'Water on a taped zone'
    reason 'the tape is lost, and slurry under it marks the trim'
    at families: ['wash', 'decontamination', 'maintenance']
    warns { holds('masked') }
}

rule('no-water-beside-soft-protection') {
    title 'Water beside a wax, sealant or coating that is still soft'
    reason 'water runs and drifts onto zones that touch, and marks what has not set'
    at families: ['wash', 'wheels', 'decontamination', 'maintenance'], stages: ['fabric-roof-wash', 'engine-bay-clean']
    // on the zone itself most of these stages refuse it
    forbids {
        holds('curing', near: true)
                && (!holds('curing') || step.stage in ['tar-removal', 'claying', 'shuts-and-seams', 'engine-bay-clean'])
    }
}

rule('no-wash-before-full-cure') {
    title 'No wash within 7 days of a coating or film'
    reason 'full cure takes 7 to 14 days, and film edges creep'
    at families: ['wash', 'maintenance']
    forbids { since('ceramic-coating', 'film-fitting') < 168.h }
}

rule('no-wash-of-fresh-paint') {
    title 'Fresh paint is not washed for two days'
    reason 'the surface is still soft; most painters say 48 to 72 hours'
    at families: ['wash', 'decontamination', 'maintenance'], surfaces: ['paint']
    forbids { surveyed('repainted-days') != null && surveyed('repainted-days') + step.day < 2 }
    warns { surveyed('repainted-days') != null && surveyed('repainted-days') + step.day < 3 }
}

rule('no-strip-wash-on-coating') {
    title 'A strip wash on a coating that was found'
    reason 'it strips what was paid for'
    at stages: ['strip-wash']
    warns { found('coated') }
}
