// What a zone, the vehicle or the bay can be. Meanings are the trade's; the life span is common practice, no source.
// Facts that the survey finds (hard paint, a repaint) are not states: see facts.groovy.

// dirt, water, chemistry
state 'loose-soil', means: 'grit still on the surface; how a vehicle arrives', opposite: 'washed'
state 'washed', means: 'contact-washed, no loose grit', opposite: 'loose-soil'
state 'wet', means: 'open surfaces carry water', opposite: 'dry'
state 'dry', means: 'open surfaces carry no water', opposite: 'wet'
state 'seams-dry', means: 'nothing left behind mirrors, badges, lamps and shuts either; much later than dry', opposite: 'wet'
state 'live', means: 'a product is on the surface with its clock running', opposite: 'rinsed'
state 'rinsed', means: 'no earlier chemistry left; only a rinse sets it', opposite: 'live'
state 'iron-clear', means: 'no iron fallout left'
state 'tar-clear', means: 'no tar or glue left; a survey may find none to begin with'
state 'scale-clear', means: 'no water marks left'
state 'clayed', means: 'bonded dirt lifted by clay'
state 'decontaminated', means: 'washed, and free of iron, tar and bonded dirt', madeOf: ['washed', 'iron-clear', 'tar-clear', 'clayed']
state 'protection-off', means: 'old wax, sealant or dressing stripped'

// measuring and covering
state 'measured', means: 'readings recorded for this zone'
state 'spot-proven', means: 'the method is proven on this paint'
state 'masked', means: 'taped up'
state 'trim-off', means: 'parts taken off'
state 'touched-in', means: 'paint put in a chip or scratch, not yet levelled'

// the finish ladder
state 'sanded', means: 'levelled by abrasive; a haze that must be compounded'
state 'compounded', means: 'cut by compound; a haze that must be polished'
state 'polished', means: 'polished'
state 'refined', means: 'finished to last gloss'
state 'oily', means: 'polishing oils or silicone on it'
state 'dusty', means: 'dust or slurry on it'
state 'glazed', means: 'fillers in the defects'
state 'panel-wiped', means: 'bare, degreased, ready to bond', lasts: 60.min
state 'finish-checked', means: 'passed under inspection lights after a panel wipe'

// what protects it
state 'waxed', means: 'wax on it'
state 'sealed', means: 'synthetic sealant on it'
state 'coated', means: 'coating on it'
state 'filmed', means: 'protection film on it'
state 'dressed', means: 'dressing on it'
state 'proofed', means: 'proofed fabric'
state 'film-ready', means: 'clean to film grade, edges included'
state 'curing', means: 'the clock since the last layer is running: keep it dry', opposite: 'water-safe'
state 'water-safe', means: 'safe to get wet', opposite: 'curing'

// the vehicle as a whole
state 'booked-in', means: 'arrival check done, damage agreed', scope: 'vehicle'
state 'surveyed', means: 'defects graded and photographed', scope: 'vehicle'
state 'final-passed', means: 'a second person has passed the work', scope: 'vehicle'
state 'handed-over', means: 'customer has the vehicle and the aftercare card', scope: 'vehicle'
state 'wheels-off', means: 'a wheel is off: the vehicle may not move', scope: 'vehicle', opposite: 'torqued'
state 'torqued', means: 'wheels are on and tight: as it came, or torqued after refitting', scope: 'vehicle', opposite: 'wheels-off'
state 'vacuumed', means: 'cabin emptied and vacuumed', scope: 'vehicle'
state 'cabin-clean', means: 'hard surfaces of the cabin are clean', scope: 'vehicle'
state 'fabric-damp', means: 'seats, carpet or headlining are damp', scope: 'vehicle', opposite: 'fabric-dry'
state 'fabric-dry', means: 'fabric is dry through', scope: 'vehicle', opposite: 'fabric-damp'
state 'leather-clean', means: 'leather is clean', scope: 'vehicle'
state 'odour-treated', means: 'source of the smell is treated', scope: 'vehicle'
state 'aired', means: 'aired after ozone', scope: 'vehicle'
state 'cabin-guarded', means: 'leather or fabric guard on it', scope: 'vehicle'
state 'glass-clean', means: 'glass is clean inside and out', scope: 'vehicle'

// what the bay gives at the hour of the work
state 'cool', means: 'surface not above about 30 °C', scope: 'condition'
state 'shade', means: 'no direct sun', scope: 'condition'
state 'lit', means: 'inspection lights', scope: 'condition'
state 'drained', means: 'wash water runs to a permitted drain', scope: 'condition'
state 'ventilated', means: 'air moves out of the bay', scope: 'condition'
state 'still', means: 'no draught and no dust', scope: 'condition'
state 'heated', means: 'bay held at temperature', scope: 'condition'
state 'engine-cold', means: 'engine has cooled down', scope: 'condition'
state 'electrics-covered', means: 'electrics under the bonnet are covered', scope: 'condition'
