for (int i = 0; i >= 0; i = 0) { }
