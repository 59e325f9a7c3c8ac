package baywright.library;

import baywright.library.Rule.Ask;
import baywright.library.Rule.Reach;
import baywright.script.Call;
import baywright.script.Value;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.List;

/** Turns a function as it is asked into what is asked. */
final class RuleAsks {

    private RuleAsks() {}

    static Ask of(Call call) {
        Word word = call.word();
        List<String> names = new ArrayList<>();
        word.positional().forEach(p -> names.add(call.text(p.name())));
        for (Value more : call.several()) {
            names.add((String) more.raw());
        }
        boolean anywhere = word.param("anywhere").isPresent() && call.yes("anywhere");
        boolean near = word.param("near").isPresent() && call.yes("near");
        boolean sameBay = word.param("sameBay").isPresent() && call.yes("sameBay");
        String until = word.param("until").isPresent() ? call.text("until") : "";
        Reach reach = anywhere ? Reach.ANYWHERE : near ? Reach.NEAR : Reach.ZONE;
        return new Ask(word.name(), names, until, reach, sameBay);
    }
}
