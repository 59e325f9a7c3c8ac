def a = «9000×!»true
