/**
 * When work can be done: activities with waits between them, the hours and resources of a shop, the timetable and what
 * holds it up, and what becomes of it when work takes longer. Times are whole minutes that really pass. Uses plan, chance,
 * library, vehicle and quantity; knows no price and no file.
 */
package baywright.schedule;
