do { } while (true)
