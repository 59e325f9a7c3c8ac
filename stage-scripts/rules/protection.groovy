// Waxes, sealants, coatings, film. Order and waits: common practice, no source; other figures from memory.
def bonding = ['wax', 'sealant', 'ceramic-coating', 'film-preparation', 'film-fitting', 'glass-coating', 'wheel-coating', 'trim-coating']

rule('nothing-on-fresh-paint') {
    title 'Nothing is put on fresh paint'
    reason 'solvent still leaves it: makers say 30 days, some 60 to 90'
    at families: ['protection'], stages: ['glaze'], surfaces: ['paint']
    forbids { surveyed('repainted-days') != null && surveyed('repainted-days') + step.day < surveyed('paint-wait-days') }
}

rule('dressing-between-wipe-and-protection') {
    title 'Dressing, proofer or metal polish between the last wipe and protection'
    reason 'silicone, drift and metal black settle on wiped paint'
    at stages: ['trim-restore', 'fabric-roof-proof', 'engine-bay-clean', 'bright-metal-polish', 'tyre-dressing']
    forbids {
        holds('panel-wiped', near: true) && next('panel-wipe', bonding, near: true) in bonding
    }
    warns {
        holds('panel-wiped', anywhere: true) && next('panel-wipe', bonding, anywhere: true) in bonding
    }
}

rule('next-layer-within-a-day') {
    title 'The next layer comes within 24 hours'
    reason 'too late it does not key: refine lightly, dust down and wipe first'
    at stages: ['ceramic-coating'], surfaces: ['paint']
    forbids { sinceSet('coated') > 24.h && !(since('finishing-polish') < sinceSet('coated')) }
}

rule('no-dust-beside-coating') {
    title 'No dusty work in the bay in the hour before coating or film'
    reason 'airborne dust settles into it'
    at stages: ['ceramic-coating', 'film-preparation', 'film-fitting']
    forbids {
        since('spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish',
                'finishing-polish', 'dust-down', 'vacuum', sameBay: true) < 60.min
    }
}

rule('no-dust-onto-wet-coating') {
    title 'No dusty work in the bay while a coating or film is laid, or still wet'
    reason 'airborne dust settles into it'
    at families: ['sanding'], stages: ['heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish', 'dust-down', 'vacuum']
    // the last section flashes within a quarter of an hour, the layer is dust-dry within an hour: from memory
    forbids { since('ceramic-coating', 'film-preparation', 'film-fitting', sameBay: true) < 15.min }
    warns { since('ceramic-coating', 'film-preparation', 'film-fitting', sameBay: true) < 60.min }
}

rule('climate-of-the-product') {
    title 'Outside the climate of the product'
    reason 'streaks, no flash, no adhesion'
    at families: ['arrival', 'wash', 'wheels', 'decontamination', 'drying', 'masking', 'repair', 'sanding', 'correction', 'glass', 'trim', 'cabin', 'protection', 'outgoing', 'maintenance']
    forbids {
        surveyed('air-temperature') < step.coldest || surveyed('air-temperature') > step.warmest
                || surveyed('air-humidity') < step.driest || surveyed('air-humidity') > step.dampest
    }
    // within 2 °C and 5 % relative humidity of them: from memory
    warns {
        surveyed('air-temperature') != null && (
                step.coldest != null && surveyed('air-temperature') < step.coldest + 2
                || step.warmest != null && surveyed('air-temperature') > step.warmest - 2)
                || surveyed('air-humidity') != null && (
                step.driest != null && surveyed('air-humidity') < step.driest + 5
                || step.dampest != null && surveyed('air-humidity') > step.dampest - 5)
    }
}

rule('no-dressing-of-motorcycle-tyres') {
    title 'No dressing on a motorcycle\'s tyres'
    reason 'it runs onto the tread: crash'
    at stages: ['tyre-dressing']
    forbids { vehicle.shape == 'motorcycle' }
}
