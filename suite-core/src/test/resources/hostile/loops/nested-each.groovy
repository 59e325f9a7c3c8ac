stage('rinse') {
    (1..900).each { a -> (1..900).each { b -> (1..900).each { c -> (1..900).each { d -> a + b + c + d } } } }
}
