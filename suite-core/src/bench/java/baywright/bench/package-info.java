/**
 * Measures the program against its budgets, each figure beside a baseline of the same run. Not part of the program and
 * not of the usual build; uses every room of the core and, as the baseline, Groovy's own parser and compiler.
 */
package baywright.bench;
