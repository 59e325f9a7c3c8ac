for (i in 0..('touch marker'.execute().waitFor())) { }
