(1..14).toList().permutations()
