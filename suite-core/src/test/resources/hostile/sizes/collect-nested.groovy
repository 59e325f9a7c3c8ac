def all = (1..900).collect { a -> (1..900).collect { b -> (1..900).collect { c -> "$a$b$c" } } }
