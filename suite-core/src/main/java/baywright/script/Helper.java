package baywright.script;

/**
 * A local that is worked out anew with every call: {@code def half = { x -> x / 2 }}.
 *
 * @param name  by which it is called
 * @param block its parameters and what it works out
 * @param scope the locals that it sees
 */
record Helper(String name, Node.Block block, Scope scope) {}
