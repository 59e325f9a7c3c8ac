Eval.me("new File('marker').createNewFile()")
