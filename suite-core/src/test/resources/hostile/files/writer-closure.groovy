new File('marker').withWriter { it << 'written' }
