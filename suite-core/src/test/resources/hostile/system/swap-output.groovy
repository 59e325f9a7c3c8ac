System.setOut(new PrintStream(new ByteArrayOutputStream()))
