// What must not meet. Gas pairs: any chlorine-industry chart of incompatibilities and the data sheets; hours from memory, the rest common practice.
rule('acid-and-iron-remover') {
    title 'Acid and iron remover on one zone without a plain rinse between'
    reason 'gives off a toxic sulphide gas'
    at families: ['wash', 'wheels', 'decontamination', 'maintenance']
    forbids {
        uses('acid') && usedSince('thioglycolate', until: 'rinsed')
                || uses('thioglycolate') && usedSince('acid', until: 'rinsed')
                || uses('acid') && uses('thioglycolate')
    }
}

rule('acid-and-hypochlorite') {
    title 'Acid and hypochlorite in one shift'
    reason 'gives off chlorine'
    at families: ['wash', 'wheels', 'decontamination', 'maintenance', 'cabin']
    forbids {
        uses('acid') && sinceUse('hypochlorite', anywhere: true) < 12.h
                || uses('hypochlorite') && sinceUse('acid', anywhere: true) < 12.h
                || uses('acid') && uses('hypochlorite')
    }
}

rule('hypochlorite-and-ammonia') {
    title 'Hypochlorite and ammonia in one shift'
    reason 'gives off chloramine'
    at families: ['wash', 'wheels', 'decontamination', 'maintenance', 'cabin', 'glass', 'protection']
    forbids {
        uses('ammonia') && sinceUse('hypochlorite', anywhere: true) < 12.h
                || uses('hypochlorite') && sinceUse('ammonia', anywhere: true) < 12.h
                || uses('ammonia') && uses('hypochlorite')
    }
}

rule('no-strong-chemistry-on-bare-metal') {
    title 'No acid or strong alkali on bare, polished or anodised metal'
    reason 'stains are permanent'
    at families: ['wash', 'wheels', 'decontamination', 'trim', 'maintenance'], surfaces: ['wheel', 'bright-metal', 'engine-bay']
    forbids {
        surveyed('metal-finish') in ['bare', 'polished', 'anodised']
                && (uses('acid') || uses('alkaline-pre-wash-liquid') || uses('all-purpose-cleaner'))
    }
}

rule('no-tar-solvent-on-lamps-film-fresh-paint') {
    title 'No tar solvent on lamps, film or fresh paint'
    reason 'it crazes plastic, lifts film edges and softens fresh paint'
    at families: ['wash', 'wheels', 'decontamination']
    forbids {
        uses('tar-solvent') && (zone.surface == 'lamp' || holds('filmed')
                || surveyed('repainted-days') != null && surveyed('repainted-days') + step.day < surveyed('paint-wait-days'))
    }
    // the edge of a film lies at the border of its panel
    warns { uses('tar-solvent') && holds('filmed', near: true) }
}

rule('no-panel-wipe-on-soft-single-stage') {
    title 'No panel wipe on soft single-stage paint'
    reason 'the solvent crazes it or takes colour off'
    at families: ['masking', 'correction', 'protection'], surfaces: ['paint']
    forbids {
        uses('panel-wipe-liquid') && surveyed('paint') == 'single-stage' && surveyed('hardness') == 'soft'
    }
}

rule('no-all-purpose-cleaner-on-screens') {
    title 'No all-purpose cleaner in a cabin with open screens'
    reason 'it takes the coating off a screen; cover it or clean it with water'
    at families: ['cabin'], surfaces: ['cabin']
    forbids { uses('all-purpose-cleaner') && surveyed('screens') == 'open' }
}

rule('no-ammonia-on-tint') {
    title 'No ammonia on tinted glass'
    reason 'it lifts and crazes tint film'
    at families: ['glass', 'wash', 'maintenance'], surfaces: ['glass']
    forbids { uses('ammonia') && surveyed('tinted') }
}

rule('solvent-wants-air') {
    title 'Flammable solvent only where the air moves'
    reason 'highly flammable vapour'
    at families: ['decontamination', 'masking', 'repair', 'correction', 'glass', 'trim', 'cabin', 'protection']
    forbids { uses('flammable') && !holds('ventilated') }
}

rule('solvent-wants-cool') {
    title 'Flammable solvent only on a cool surface'
    reason 'on a hot panel it boils off at once: more vapour, and streaks'
    at families: ['decontamination', 'masking', 'repair', 'correction', 'glass', 'trim', 'cabin', 'protection']
    forbids { uses('flammable') && !holds('cool') }
}

rule('no-spark-beside-solvent') {
    title 'No lamp, flame or charger beside flammable solvent'
    reason 'highly flammable vapour'
    at families: ['decontamination', 'masking', 'repair', 'correction', 'glass', 'trim', 'cabin', 'protection']
    // a curing lamp is hot for a quarter of an hour: from memory
    forbids { uses('flammable') && (surveyed('ignition-near') || since('warm-cure', sameBay: true) < 15.min) }
}
