def a = «260×(int a) -> »1
