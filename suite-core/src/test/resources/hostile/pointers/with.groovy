'touch marker'.with { execute().waitFor() }
