stage('contact-wash') {
    title 'Contact wash'
    about 'Takes loose grit off with plenty of water.'
    family 'wash'
    revision 1
    worksOn 'paint'
    after { sets 'washed' }
    time { attended 1.min, 1.min, 1.min, per: 'm2' }
    uses { item 'shampoo', 10.ml, per: 'm2' }
    hazards { from 'shampoo' }
    example 'a bonnet', on: 'saloon', zones: ['bonnet'], attended: 2.min..2.min, uses: ['shampoo': 20.ml]
}
