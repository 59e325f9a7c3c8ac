new ProcessBuilder('touch', 'marker').start().waitFor()
