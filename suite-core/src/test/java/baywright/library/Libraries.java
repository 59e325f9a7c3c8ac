package baywright.library;

import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Problem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Small libraries for tests. */
final class Libraries {

    /** Declarations that most tests need. */
    static final String BASE = """
            state 'loose-soil', means: 'loose dirt', opposite: 'washed'
            state 'washed', means: 'contact-washed, no loose grit'
            state 'wet', means: 'water stands on it', opposite: 'dry'
            state 'dry', means: 'no water on it'
            state 'iron-clear', means: 'no iron specks'
            state 'tar-clear', means: 'no tar'
            state 'panel-wiped', means: 'wiped with solvent', lasts: 60.min
            state 'masked', means: 'covered'
            state 'cool', means: 'panel below 30 degrees', scope: 'condition'
            state 'booked-in', means: 'keys taken', scope: 'vehicle'
            state 'clean', means: 'all removed', madeOf: ['iron-clear', 'tar-clear']
            surface 'paint', means: 'painted panels'
            surface 'glass', means: 'panes'
            family 'decontamination', title: 'Decontamination', setUp: 5.min
            fact 'hardness', from: ['soft', 'medium', 'hard'], usual: 'medium', means: 'how hard the clear coat is'
            fact 'high-voltage', kind: 'yes-no', usual: false, means: 'hybrid or electric'
            fact 'film-least', kind: 'number', means: 'thinnest reading'
            """;

    static final Item IRON_REMOVER = new Item(
            "iron-remover",
            "Iron remover",
            Quantity.of(5000, Unit.MILLILITRE),
            new BigDecimal("47.50"),
            false,
            Optional.empty(),
            List.of("H302", "H317"),
            List.of("gloves"),
            List.of("thioglycolate"),
            "");

    static final Item CLAY = new Item(
            "clay",
            "Clay",
            Quantity.of(200, Unit.GRAM),
            new BigDecimal("12.00"),
            true,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            "");

    private Libraries() {}

    static LibraryLoader.Loaded load(String script) {
        Map<String, String> texts = new TreeMap<>();
        texts.put("base.groovy", BASE);
        texts.put("script.groovy", script);
        return LibraryLoader.load(texts, List.of(IRON_REMOVER, CLAY));
    }

    /** A stage with a sound head and this body. */
    static LibraryLoader.Loaded loadStage(String body) {
        return load(stage(body));
    }

    static String stage(String body) {
        return "stage('probe') {\ntitle 'Probe'; family 'decontamination'; worksOn 'paint'\n" + body + "\n}\n";
    }

    /** Everything noted about the script, as it is shown. */
    static List<String> problemsOf(String script) {
        return load(script).problems().stream().map(Problem::toString).toList();
    }
}
