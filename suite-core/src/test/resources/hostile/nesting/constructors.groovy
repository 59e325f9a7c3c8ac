def a = «2000×new A(»«2000×)»
