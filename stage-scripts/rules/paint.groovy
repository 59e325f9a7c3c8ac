// Machine work and the paint that is there for it. Order and thresholds: common practice, no source; shares from memory.
// The two film limits are the shop's own (shop.json, "film").
def machine = ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish']
def abrasive = ['trial-section', 'spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish']

rule('film-under-the-stop') {
    title 'No abrasive on film under the stop limit'
    reason 'not enough clear coat is left: clean and protect only'
    at stages: abrasive, surfaces: ['paint']
    forbids { film.sure < setting('film-stop') }
}

rule('thin-film-no-sanding') {
    title 'Thin film is neither sanded nor compounded heavily'
    reason 'there is paint for one light pass, not for levelling'
    at stages: ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound'], surfaces: ['paint']
    forbids { film.sure >= setting('film-stop') && film.sure < setting('film-care') }
}

rule('thin-film-with-care') {
    title 'Thin film: least aggressive method, and the customer is told'
    reason 'each pass takes from paint that cannot be put back'
    at stages: ['trial-section', 'compound', 'one-step', 'polish', 'finishing-polish'], surfaces: ['paint']
    warns { film.sure >= setting('film-stop') && film.sure < setting('film-care') }
}

rule('film-budget') {
    title 'The work planned on a zone takes more film than its budget'
    reason 'about a quarter of the clear coat may be used up in the life of the car; count the lowest reading, never the mean'
    at stages: abrasive, surfaces: ['paint']
    // told once for each zone, at the first step that takes film
    forbids { count(abrasive) == 0 && film.count > 0 && !(surveyed('paint') in ['matt', 'wrap']) && film.plannedLikely > film.budget }
    warns { count(abrasive) == 0 && film.count > 0 && !(surveyed('paint') in ['matt', 'wrap']) && film.plannedMost > film.budget }
}

rule('unreadable-zone') {
    title 'A gauge cannot read this zone'
    reason 'no evidence of clear coat, a soft backing, and heat that stays'
    at stages: abrasive, surfaces: ['paint']
    forbids { !film.readable && step.stage in ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound'] }
    warns { !film.readable }
}

rule('uneven-readings') {
    title 'Readings of one panel far apart'
    reason 'a blend or filler lies inside the panel: never average, use the lowest, read again'
    at stages: abrasive, surfaces: ['paint']
    // 1.4 and 40 µm are from memory
    warns { count(abrasive) == 0 && film.count > 1 && (film.most > film.least * 1.4 || film.most - film.least > 40) }
}

rule('enough-readings') {
    title 'Fewer readings than the zone should have'
    reason 'one reading means nothing alone, and the thinnest place is found only by looking; three, five or nine by size are common practice'
    at stages: abrasive, surfaces: ['paint']
    warns { count(abrasive) == 0 && film.count > 0 && film.count < 3 }
    notes { count(abrasive) == 0 && film.count > 0 && film.count < film.wanted }
}

rule('single-stage-floor') {
    title 'Single-stage paint keeps its floor'
    reason 'the topcoat is the colour: what is left after the most that may come off stays above the stop limit'
    at stages: abrasive, surfaces: ['paint']
    forbids {
        surveyed('paint') == 'single-stage' && count(abrasive) == 0 && film.count > 0
                && film.least - film.plannedMost < setting('film-stop')
    }
}

rule('single-stage-note') {
    title 'Single-stage paint is worked on a signed note only'
    reason 'colour on the pad is normal and cannot be put back'
    at stages: abrasive, surfaces: ['paint']
    forbids { surveyed('paint') == 'single-stage' && !surveyed('risk-signed') }
}

rule('no-abrasive-on-matt') {
    title 'No abrasive, glaze or wax on matt or wrapped zones'
    reason 'turns patchy gloss and cannot be undone'
    at stages: ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish', 'glaze', 'wax'], surfaces: ['paint']
    forbids { surveyed('paint') == 'matt' || surveyed('paint') == 'wrap' }
}

rule('fresh-paint-no-machine') {
    title 'Machine work on fresh paint needs the painter\'s word'
    reason 'solvent is still leaving, and the paint moves under the pad'
    at stages: abrasive, surfaces: ['paint']
    forbids {
        !surveyed('painter-agrees') && surveyed('repainted-days') != null
                && surveyed('repainted-days') + step.day < surveyed('paint-wait-days')
    }
}

rule('fine-grit-before-compound') {
    title 'P1500 is refined to P3000 before any compound'
    reason 'scratches too deep for the next step cost paint and hours'
    at stages: ['heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish'], surfaces: ['paint']
    forbids { last('sanding') == 'machine-sand' && lastInput('machine-sand', 'grit') == 'P1500' && holds('sanded') }
}

rule('sanded-zone-is-polished') {
    title 'A sanded and compounded zone is polished'
    reason 'sanding haze is not a finish; one step does not clear it'
    at families: ['protection'], stages: ['final-inspection'], surfaces: ['paint']
    forbids { count('sanding') > 0 && since('polish') == null || since('polish') > since('sanding') }
}

rule('compound-haze-is-polished') {
    title 'Compound haze is left in'
    reason 'a rotary or a cutting pad leaves haze and holograms; polish or one step takes them out'
    at families: ['protection'], stages: ['final-inspection'], surfaces: ['paint']
    warns { holds('compounded') }
}

rule('no-coarser-after-finer') {
    title 'A coarser step after a finer one'
    reason 'paint is spent twice; usually a copying slip'
    at stages: machine, surfaces: ['paint']
    warns {
        step.stage in ['spot-sand', 'machine-sand']
                && last(machine) in ['refine-sand', 'heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish']
    }
    warns { step.stage == 'refine-sand' && last(machine) in ['heavy-compound', 'compound', 'one-step', 'polish', 'finishing-polish'] }
    warns { step.stage == 'heavy-compound' && last(machine) in ['compound', 'one-step', 'polish', 'finishing-polish'] }
    warns { step.stage == 'compound' && last(machine) in ['one-step', 'polish', 'finishing-polish'] }
    warns { step.stage in ['one-step', 'polish'] && last(machine) == 'finishing-polish' }
}

rule('touch-in-before-machine-work') {
    title 'Touch-in comes before machine work'
    reason 'the machine levels what was put in; afterwards it stands proud'
    at families: ['repair'], surfaces: ['paint']
    warns { since(machine) != null && !later(machine) }
}

rule('touch-in-in-the-cold') {
    title 'A touch-in is levelled under 24 hours in the cold'
    reason 'below 15 °C it hardens in a day instead of half a day, and drags out'
    at stages: ['spot-sand'], surfaces: ['paint']
    forbids { surveyed('air-temperature') < 15 && sinceSet('touched-in') < 24.h }
}

rule('no-wipe-over-soft-touch-in') {
    title 'Panel wipe over a touch-in under 24 hours'
    reason 'the solvent pulls it back out; under 12 hours it surely does'
    at families: ['masking', 'correction', 'protection'], surfaces: ['paint']
    forbids { uses('panel-wipe-liquid') && sinceSet('touched-in') < 12.h }
    warns { uses('panel-wipe-liquid') && sinceSet('touched-in') < 24.h }
}

rule('dust-down-before-bonding') {
    title 'Dust down and wipe after the last machine work anywhere'
    reason 'dust and oils travel; a wing polished late undoes the whole wipe'
    at stages: ['sealant', 'ceramic-coating', 'film-preparation'], surfaces: ['paint']
    forbids { since(machine, anywhere: true) != null && !(since('dust-down') < since(machine, anywhere: true)) }
}

rule('no-cutting-of-coating-found') {
    title 'Abrasive on a coating that was found'
    reason 'it cuts off what was paid for'
    at stages: ['spot-sand', 'machine-sand', 'refine-sand', 'heavy-compound', 'compound'], surfaces: ['paint']
    warns { found('coated') }
}
