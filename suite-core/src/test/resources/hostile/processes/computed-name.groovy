'touch marker'."${'exec' + 'ute'}"().waitFor()
