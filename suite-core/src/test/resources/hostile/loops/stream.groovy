java.util.stream.Stream.generate { 1 }.forEach { }
