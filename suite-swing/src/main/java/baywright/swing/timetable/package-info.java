/**
 * The workbench of the timetable: who does what when and in which bay, when jobs are ready, what holds them up, and starts
 * that are fixed by hand. Uses {@code api}, {@code parts} and the core; knows no other workbench and no shell.
 */
package baywright.swing.timetable;
