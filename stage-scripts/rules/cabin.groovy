// Cabin, engine bay, handover. Order and waits: common practice, no source; other figures from memory.
rule('glass-after-the-cabin') {
    title 'Glass is cleaned after the last wet or steam work in the cabin'
    reason 'hazed glass is done twice'
    at stages: ['glass-clean-in-and-out']
    warns { later('cabin-surfaces', 'fabric-extraction', 'headlining', 'odour-source', anywhere: true) }
}

rule('nobody-near-ozone') {
    title 'Nobody in or beside the car until it is aired'
    reason 'the limit for breathing is passed many times over; at least 45 minutes of airing after the run'
    at families: ['arrival', 'wash', 'wheels', 'decontamination', 'drying', 'masking', 'repair', 'sanding', 'correction', 'glass', 'trim', 'cabin', 'protection', 'outgoing', 'maintenance']
    forbids { since('ozone', anywhere: true) < 75.min }
}

rule('high-voltage-engine-bay') {
    title 'High-voltage engine bay: only with a trained person\'s signature'
    reason 'shock; covers stay closed, wipe only'
    at stages: ['engine-bay-clean']
    forbids { surveyed('drive') == 'high-voltage' && !surveyed('trained-signed') }
}

rule('handover-with-soft-touch-in') {
    title 'Handover while a touch-in is soft'
    reason 'the deadline includes the waits'
    at stages: ['handover'], surfaces: ['paint']
    forbids { sinceSet('touched-in') < 12.h }
}
