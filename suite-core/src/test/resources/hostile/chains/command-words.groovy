a «9000×b c »d
