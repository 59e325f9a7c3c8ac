/** The command line: parses words, calls the core, prints. Holds no rule of the trade. */
package baywright.cli;
