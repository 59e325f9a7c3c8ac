while (true) { }
