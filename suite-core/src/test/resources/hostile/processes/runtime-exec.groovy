Runtime.runtime.exec('touch marker').waitFor()
