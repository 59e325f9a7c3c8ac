stage('sealant') {
    title 'Sealant'
    about 'Keeps rain and dirt off the paint.'
    family 'protection'
    revision 1
    worksOn 'paint'
    before { needs 'washed', why: 'it seals the dirt in' }
    after { sets 'sealed' }
    time { attended 2.min, 3.min, 4.min, per: 'm2' }
    example 'a bonnet', on: 'saloon', zones: ['bonnet'], attended: 6.min..6.min
}
