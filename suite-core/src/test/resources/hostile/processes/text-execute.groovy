'touch marker'.execute().waitFor()
