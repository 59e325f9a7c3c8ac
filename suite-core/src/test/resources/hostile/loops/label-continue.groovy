again: while (true) { continue again }
