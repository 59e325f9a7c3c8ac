/**
 * The workbench of the survey: what was found on the vehicle and what the customer wants. Adapts the core's jobs and surveys to a drawing
 * and fields; each edit is a change of the desk.
 */
package baywright.swing.survey;
