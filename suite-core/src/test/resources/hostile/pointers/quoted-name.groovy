'touch marker'.'execute'().'waitFor'()
