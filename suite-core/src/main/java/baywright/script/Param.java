package baywright.script;

import java.util.Optional;

/**
 * An argument of a word.
 *
 * @param name     by which the word's code asks for it; for a named argument also what the script writes
 * @param type     what it may be
 * @param required whether a script must give it
 * @param usual    value when a script does not give it, as {@link Value#raw()}; empty when there is none
 */
public record Param(String name, Type type, boolean required, Optional<Object> usual) {}
