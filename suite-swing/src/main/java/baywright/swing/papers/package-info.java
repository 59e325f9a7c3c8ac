/** The papers of a job: quote, job card and hazard sheet, looked at as pages and saved. Sets nothing itself; the core does. */
package baywright.swing.papers;
