def a = switch (1) { case 1 -> new File('marker').createNewFile(); default -> 2 }
