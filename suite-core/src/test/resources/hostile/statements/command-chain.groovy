'touch marker'.execute() waitFor()
