'touch marker'.metaClass.invokeMethod('touch marker', 'execute', null).waitFor()
