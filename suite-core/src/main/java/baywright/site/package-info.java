/**
 * One site at work: opens a workspace with its stage scripts and gives each job's proof and price. Puts the rooms below
 * together and holds no rule of its own but which contingency a job gets; knows no screen and no command line.
 */
package baywright.site;
