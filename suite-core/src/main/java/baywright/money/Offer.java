package baywright.money;

/** The answer to a plan that is to be priced: a quote, or a refusal with its reasons. */
public sealed interface Offer permits Quote, Refusal {}
