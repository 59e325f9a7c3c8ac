'touch marker'?.execute()?.waitFor()
