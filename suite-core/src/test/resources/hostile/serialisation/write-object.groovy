new File('marker').withObjectOutputStream { it << 'written' }
