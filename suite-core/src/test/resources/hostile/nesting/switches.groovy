def a = «2000×switch (1) { case 1 -> »1«2000×; }»
