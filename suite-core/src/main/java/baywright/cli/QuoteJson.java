package baywright.cli;

import baywright.money.Part;
import baywright.money.Position;
import baywright.money.Price;
import baywright.money.Quote;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A quote in JSON. */
final class QuoteJson {

    private QuoteJson() {}

    static ObjectNode of(WorkedJob worked, Quote quote) {
        ObjectNode answer = Answers.object();
        answer.put("job", worked.job().id());
        answer.put("quoted", true);
        answer.put("currency", quote.ledger().currency().getCode());
        answer.set("price", price(quote.price()));
        answer.set("high", price(quote.range().high()));
        answer.put("contingencyPercent", quote.range().contingencyPercent());
        answer.put("minutes", Answers.figure(quote.ledger().minutes()));
        quote.cap().ifPresent(fit -> {
            ObjectNode cap = answer.putObject("cap");
            cap.put("amount", fit.cap().getAmount());
            cap.put("fits", fit.fits());
            cap.put("over", fit.over().getAmount());
            cap.put("spare", fit.spare().getAmount());
        });
        ObjectNode margin = answer.putObject("margin");
        margin.put("floor", quote.margin().floor().getAmount());
        margin.put("loss", quote.margin().loss());
        quote.margin().afterDirect().ifPresent(p -> margin.put("afterDirectPercent", Answers.figure(p)));
        quote.margin().afterAll().ifPresent(p -> margin.put("afterAllPercent", Answers.figure(p)));
        quote.margin().target().ifPresent(target -> margin.put("target", target.getAmount()));
        margin.put("ownerSigns", quote.margin().ownerSigns());
        answer.put("deposit", quote.deposit().getAmount());
        answer.put("validUntil", quote.validUntil().toString());
        ObjectNode proof = answer.putObject("proof");
        proof.put("library", quote.proof().library());
        proof.put("inputs", quote.proof().inputs());
        proof.put("at", quote.proof().at().toString());
        ObjectNode softened = proof.putObject("softened");
        quote.proof().softened().forEach(softened::put);
        ArrayNode parts = answer.putArray("parts");
        quote.parts().forEach(part -> parts.add(part(worked, part)));
        ArrayNode positions = answer.putArray("positions");
        quote.positions().forEach(position -> positions.add(position(position)));
        return answer;
    }

    private static ObjectNode price(Price price) {
        ObjectNode one = Answers.object();
        one.put("net", price.net().getAmount());
        one.put("tax", price.tax().getAmount());
        one.put("gross", price.gross().getAmount());
        if (price.taxes().size() > 1) {
            ArrayNode taxes = one.putArray("taxes");
            price.taxes().forEach(tax -> {
                ObjectNode rate = taxes.addObject();
                rate.put("percent", Answers.figure(tax.percent()));
                rate.put("net", tax.net().getAmount());
                rate.put("tax", tax.tax().getAmount());
            });
        }
        return one;
    }

    private static ObjectNode part(WorkedJob worked, Part part) {
        ObjectNode one = Answers.object();
        one.put("priority", Answers.word(part.priority()));
        one.put("minutes", Answers.figure(part.minutes()));
        one.put("provesAlone", !worked.judged().leaning().broken().contains(part.priority()));
        one.set("alone", price(part.alone()));
        one.set("upTo", price(part.upTo().low()));
        one.set("upToHigh", price(part.upTo().high()));
        return one;
    }

    private static ObjectNode position(Position position) {
        ObjectNode one = Answers.object();
        position.step().ifPresentOrElse(step -> one.put("step", step), () -> one.putNull("step"));
        one.put("subject", position.subject());
        one.put("priority", Answers.word(position.priority()));
        one.put("net", position.net().getAmount());
        return one;
    }
}
