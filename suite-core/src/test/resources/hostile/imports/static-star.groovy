import static java.nio.file.Files.*
writeString(java.nio.file.Path.of('marker'), 'written')
