stage('rinse') {
    for (a in 1..900) { for (b in 1..900) { for (c in 1..900) { for (d in 1..900) { def e = a + b + c + d } } } }
}
