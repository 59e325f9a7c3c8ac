throw new StackOverflowError()
