/** The roll-up to a ledger, the price and the quote. Uses plan and library; knows no file and no screen. */
package baywright.money;
