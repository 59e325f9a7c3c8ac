java.nio.file.Files.createSymbolicLink(java.nio.file.Path.of('marker'), java.nio.file.Path.of('precious.txt'))
