package baywright.library;

import baywright.library.Example.Between;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import baywright.script.DamagedData;
import baywright.script.Place;
import baywright.script.PlainReader;
import baywright.script.PlainValues;
import baywright.script.PlainWriter;
import baywright.script.Type;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a stage says once and for all, as plain data; what it says for one use stays in its script. */
final class StageData {

    private static final int MOST = 1_000;
    private static final Place NOWHERE = Place.ofFile("");

    private StageData() {}

    static void write(PlainWriter out, Stage stage) {
        out.text(stage.id());
        out.text(stage.like());
        out.text(stage.title());
        out.text(stage.about());
        out.text(stage.family());
        out.count(stage.revision());
        out.count(stage.inputs().size());
        stage.inputs().forEach(i -> write(out, i));
        texts(out, stage.surfaces());
        out.count(stage.examples().size());
        stage.examples().forEach(e -> write(out, e));
        PlainValues.write(out, stage.place());
    }

    /**
     * A stage whose terms come from elsewhere.
     *
     * @throws DamagedData when a script could not have said it so
     */
    static Stage read(PlainReader in, LazyStages terms) throws DamagedData {
        String id = id(in);
        String like = in.text();
        String title = people(in);
        String about = in.text();
        String family = id(in);
        int revision = in.count(999_999);
        List<Input> inputs = new ArrayList<>();
        int many = in.size(MOST);
        for (int i = 0; i < many; i++) {
            inputs.add(input(in));
        }
        List<String> surfaces = texts(in);
        List<Example> examples = new ArrayList<>();
        int shown = in.size(MOST);
        for (int i = 0; i < shown; i++) {
            examples.add(example(in));
        }
        Place place = PlainValues.place(in);
        return new Stage(
                id,
                like,
                title,
                about,
                family,
                revision,
                inputs,
                surfaces,
                examples,
                terms.terms(id, place.file(), inputs),
                place);
    }

    private static String id(PlainReader in) throws DamagedData {
        String id = in.text();
        if (!Type.isId(id)) {
            throw new DamagedData("an id is none");
        }
        return id;
    }

    private static String people(PlainReader in) throws DamagedData {
        String text = in.text();
        if (!Type.TEXT.fits(Value.of(text, NOWHERE))) {
            throw new DamagedData("a title is none");
        }
        return text;
    }

    private static void texts(PlainWriter out, List<String> texts) {
        out.count(texts.size());
        texts.forEach(out::text);
    }

    private static List<String> texts(PlainReader in) throws DamagedData {
        int size = in.size(MOST);
        List<String> texts = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            texts.add(in.text());
        }
        return texts;
    }

    private static void write(PlainWriter out, Input input) {
        out.text(input.name());
        out.text(input.kind().name());
        texts(out, input.choices());
        out.text(input.dimension().map(Dimension::name).orElse(""));
        maybe(out, input.least());
        maybe(out, input.most());
        PlainValues.write(out, input.usual());
        out.text(input.why());
        PlainValues.write(out, input.place());
    }

    private static Input input(PlainReader in) throws DamagedData {
        String name = id(in);
        Input.Kind kind = named(Input.Kind.values(), in.text());
        List<String> choices = texts(in);
        String dimension = in.text();
        Input input = new Input(
                name,
                kind,
                choices,
                dimension.isEmpty() ? Optional.empty() : Optional.of(named(Dimension.values(), dimension)),
                maybe(in),
                maybe(in),
                PlainValues.value(in),
                in.text(),
                PlainValues.place(in));
        boolean measured = kind == Input.Kind.COUNT || kind == Input.Kind.MEASURE;
        boolean whole = input.least().isPresent() == measured && input.most().isPresent() == measured;
        if (!whole || !numeric(input) || InputValues.fit(input, input.usual()).isEmpty()) {
            throw new DamagedData("input '" + name + "' is none");
        }
        return input;
    }

    private static <E extends Enum<E>> E named(E[] all, String name) throws DamagedData {
        for (E one : all) {
            if (one.name().equals(name)) {
                return one;
            }
        }
        throw new DamagedData("a kind is none");
    }

    private static boolean numeric(Input input) {
        Class<?> wanted = input.kind() == Input.Kind.MEASURE ? Quantity.class : BigDecimal.class;
        return input.least().stream().allMatch(v -> wanted.isInstance(v.raw()))
                && input.most().stream().allMatch(v -> wanted.isInstance(v.raw()));
    }

    private static void maybe(PlainWriter out, Optional<Value> value) {
        out.yes(value.isPresent());
        value.ifPresent(v -> PlainValues.write(out, v));
    }

    private static Optional<Value> maybe(PlainReader in) throws DamagedData {
        return in.yes() ? Optional.of(PlainValues.value(in)) : Optional.empty();
    }

    private static void write(PlainWriter out, Example example) {
        out.text(example.name());
        out.text(example.shape());
        texts(out, example.zones());
        values(out, example.with());
        values(out, example.given());
        values(out, example.drivers());
        between(out, example.attended());
        between(out, example.standing());
        out.count(example.uses().size());
        example.uses().forEach((item, amount) -> {
            out.text(item);
            PlainValues.write(out, amount);
        });
        between(out, example.removes());
        texts(out, example.sets());
        texts(out, example.clears());
        PlainValues.write(out, example.place());
    }

    private static Example example(PlainReader in) throws DamagedData {
        return new Example(
                people(in),
                in.text(),
                texts(in),
                values(in),
                values(in),
                values(in),
                between(in),
                between(in),
                amounts(in),
                between(in),
                texts(in),
                texts(in),
                PlainValues.place(in));
    }

    private static void values(PlainWriter out, Map<String, Value> values) {
        out.count(values.size());
        values.forEach((name, value) -> {
            out.text(name);
            PlainValues.write(out, value);
        });
    }

    private static Map<String, Value> values(PlainReader in) throws DamagedData {
        Map<String, Value> values = new LinkedHashMap<>();
        int size = in.size(MOST);
        for (int i = 0; i < size; i++) {
            String name = in.text();
            values.put(name, PlainValues.value(in));
        }
        return values;
    }

    private static Map<String, Quantity> amounts(PlainReader in) throws DamagedData {
        Map<String, Quantity> amounts = new LinkedHashMap<>();
        int size = in.size(MOST);
        for (int i = 0; i < size; i++) {
            String item = in.text();
            amounts.put(item, PlainValues.quantity(in));
        }
        return amounts;
    }

    private static void between(PlainWriter out, Optional<Between> between) {
        out.yes(between.isPresent());
        between.ifPresent(b -> {
            PlainValues.write(out, b.least());
            PlainValues.write(out, b.most());
        });
    }

    private static Optional<Between> between(PlainReader in) throws DamagedData {
        return in.yes()
                ? Optional.of(new Between(PlainValues.quantity(in), PlainValues.quantity(in)))
                : Optional.empty();
    }
}
