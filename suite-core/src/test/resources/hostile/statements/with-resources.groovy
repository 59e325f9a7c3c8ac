try (def out = new FileOutputStream('marker')) { }
