/**
 * What leaves the shop on paper: the quote for a customer, the job card for the crew, and quotes that are kept. Documents
 * are records without any formatting; pages are made of them. Uses every room below the command line; holds no figure of
 * its own.
 */
package baywright.document;
