state 'loose-soil', means: 'grit on the surface', opposite: 'washed'
state 'washed', means: 'no loose grit', opposite: 'loose-soil'
state 'sealed', means: 'sealant on the paint'
surface 'paint', means: 'painted panels'
surface 'vehicle', means: 'the vehicle as a whole'
family 'wash', title: 'Washing', setUp: 10.min
family 'protection', title: 'Protection', setUp: 0.min
fact 'hardness', from: ['soft', 'medium'], usual: 'medium', means: 'how hard the clear coat is'
factor('hardness') {
    reads 'hardness'
    value 'soft', 0.9
    families 'protection'
}
