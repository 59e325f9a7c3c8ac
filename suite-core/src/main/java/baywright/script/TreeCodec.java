package baywright.script;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A script's tree as bytes and back. No class is named in the bytes; whatever they hold, what comes out is a tree within
 * the limits of a script that was parsed, or {@link DamagedData}.
 */
public final class TreeCodec {

    /** Counted up with every change of the form. */
    public static final int VERSION = 1;

    /** Nodes in nodes; more than any script of the shipped library has, and few enough for a small stack. */
    private static final int DEPTH = 300;

    private static final int NODES = 40_000;

    /** What a node is; its number in this list is written. */
    private enum Tag {
        NUMBER,
        TEXT,
        TRUE,
        FALSE,
        NOTHING,
        TEMPLATE,
        ITEMS,
        ENTRIES,
        NAME,
        UNARY,
        BINARY,
        CHOOSE,
        FALLBACK,
        SPAN,
        AT,
        MEMBER,
        CALL,
        BLOCK,
        DEFINE,
        WHEN,
        CHOICE,
        EACH
    }

    private static final List<Tag> TAGS = List.of(Tag.values());

    private TreeCodec() {}

    /** The bytes of a file's statements; nothing when they are too deep or too many to be worth keeping. */
    public static Optional<byte[]> encode(List<Node> body) {
        Writer writer = new Writer();
        try {
            writer.all(body);
        } catch (DamagedData e) {
            return Optional.empty();
        }
        return Optional.of(writer.out.bytes());
    }

    /**
     * The statements of a file.
     *
     * @param file name that all places get
     * @throws DamagedData when the bytes are not those of a tree within the limits
     */
    public static List<Node> decode(String file, byte[] bytes) throws DamagedData {
        Reader reader = new Reader(file, new PlainReader(bytes));
        List<Node> body = reader.all();
        reader.in.finish();
        return body;
    }

    private static final class Writer {
        private final PlainWriter out = new PlainWriter();
        private int depth;
        private int nodes;

        void all(List<Node> list) throws DamagedData {
            out.count(list.size());
            for (Node node : list) {
                one(node);
            }
        }

        private void text(String text) throws DamagedData {
            if (Characters.hasForbidden(text)) {
                throw new DamagedData("forbidden characters are not kept");
            }
            out.text(text);
        }

        private void texts(List<String> list) throws DamagedData {
            out.count(list.size());
            for (String text : list) {
                text(text);
            }
        }

        private void entries(List<Node.Entry> list) throws DamagedData {
            out.count(list.size());
            for (Node.Entry entry : list) {
                one(entry.key());
                one(entry.value());
            }
        }

        private void begin(Tag tag, Place place) {
            out.count(TAGS.indexOf(tag));
            out.count(place.line());
            out.count(place.column());
        }

        void one(Node node) throws DamagedData {
            if (++depth > DEPTH || ++nodes > NODES) {
                throw new DamagedData("too deep or too large to keep");
            }
            if (node instanceof Node.Literal literal) {
                literal(literal);
            } else if (node instanceof Node.Call call) {
                call(call);
            } else if (node instanceof Node.Block block) {
                begin(Tag.BLOCK, block.place());
                texts(block.parameters());
                out.yes(block.bare());
                all(block.body());
            } else if (!value(node)) {
                statement(node);
            }
            depth--;
        }

        private void literal(Node.Literal literal) throws DamagedData {
            if (literal.raw() instanceof BigDecimal number) {
                begin(Tag.NUMBER, literal.place());
                out.number(number);
            } else if (literal.raw() instanceof String text) {
                begin(Tag.TEXT, literal.place());
                text(text);
            } else if (literal.raw() instanceof Boolean yes) {
                begin(yes ? Tag.TRUE : Tag.FALSE, literal.place());
            } else {
                begin(Tag.NOTHING, literal.place());
            }
        }

        private void call(Node.Call call) throws DamagedData {
            begin(Tag.CALL, call.place());
            text(call.name());
            out.yes(call.receiver().isPresent());
            if (call.receiver().isPresent()) {
                one(call.receiver().get());
            }
            all(call.args());
            entries(call.named());
            out.yes(call.block().isPresent());
            if (call.block().isPresent()) {
                one(call.block().get());
            }
        }

        private boolean value(Node node) throws DamagedData {
            if (node instanceof Node.Template template) {
                begin(Tag.TEMPLATE, template.place());
                all(template.parts());
            } else if (node instanceof Node.Items items) {
                begin(Tag.ITEMS, items.place());
                all(items.items());
            } else if (node instanceof Node.Entries entries) {
                begin(Tag.ENTRIES, entries.place());
                entries(entries.entries());
            } else if (node instanceof Node.Name name) {
                begin(Tag.NAME, name.place());
                text(name.name());
            } else if (node instanceof Node.Unary unary) {
                begin(Tag.UNARY, unary.place());
                out.text(unary.operator().sign());
                one(unary.operand());
            } else if (node instanceof Node.Binary binary) {
                begin(Tag.BINARY, binary.place());
                out.text(binary.operator().sign());
                one(binary.left());
                one(binary.right());
            } else if (node instanceof Node.Choose choose) {
                begin(Tag.CHOOSE, choose.place());
                one(choose.condition());
                one(choose.then());
                one(choose.otherwise());
            } else if (node instanceof Node.Fallback fallback) {
                begin(Tag.FALLBACK, fallback.place());
                one(fallback.value());
                one(fallback.otherwise());
            } else if (node instanceof Node.Span span) {
                begin(Tag.SPAN, span.place());
                one(span.from());
                one(span.to());
            } else if (node instanceof Node.At at) {
                begin(Tag.AT, at.place());
                one(at.target());
                one(at.key());
            } else if (node instanceof Node.Member member) {
                begin(Tag.MEMBER, member.place());
                text(member.name());
                one(member.target());
            } else {
                return false;
            }
            return true;
        }

        private void statement(Node node) throws DamagedData {
            if (node instanceof Node.Define define) {
                begin(Tag.DEFINE, define.place());
                text(define.name());
                one(define.value());
            } else if (node instanceof Node.When when) {
                begin(Tag.WHEN, when.place());
                one(when.condition());
                all(when.then());
                all(when.otherwise());
            } else if (node instanceof Node.Choice choice) {
                begin(Tag.CHOICE, choice.place());
                one(choice.subject());
                out.count(choice.cases().size());
                for (Node.Case one : choice.cases()) {
                    all(one.matches());
                    all(one.body());
                }
                all(choice.otherwise());
            } else if (node instanceof Node.Each each) {
                begin(Tag.EACH, each.place());
                text(each.variable());
                one(each.in());
                all(each.body());
            } else {
                throw new IllegalArgumentException("no form for " + node.getClass());
            }
        }
    }

    private static final class Reader {
        private final String file;
        private final PlainReader in;
        private int depth;
        private int nodes;

        Reader(String file, PlainReader in) {
            this.file = file;
            this.in = in;
        }

        List<Node> all() throws DamagedData {
            int size = in.size(NODES);
            List<Node> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(one());
            }
            return list;
        }

        private List<String> texts() throws DamagedData {
            int size = in.size(NODES);
            List<String> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(in.text());
            }
            return list;
        }

        private List<Node.Entry> entries() throws DamagedData {
            int size = in.size(NODES);
            List<Node.Entry> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(new Node.Entry(one(), one()));
            }
            return list;
        }

        private Node one() throws DamagedData {
            if (++depth > DEPTH || ++nodes > NODES) {
                throw new DamagedData("a script is nested too deeply or too large");
            }
            Tag tag = TAGS.get(in.count(TAGS.size() - 1));
            Place place = new Place(file, in.count(Integer.MAX_VALUE), in.count(Integer.MAX_VALUE));
            Node node = one(tag, place);
            depth--;
            return node;
        }

        private Node one(Tag tag, Place place) throws DamagedData {
            return switch (tag) {
                case NUMBER -> new Node.Literal(in.number(), place);
                case TEXT -> new Node.Literal(in.text(), place);
                case TRUE -> new Node.Literal(true, place);
                case FALSE -> new Node.Literal(false, place);
                case NOTHING -> new Node.Literal(Value.NOTHING, place);
                case TEMPLATE -> new Node.Template(all(), place);
                case ITEMS -> new Node.Items(all(), place);
                case ENTRIES -> new Node.Entries(entries(), place);
                case NAME -> new Node.Name(in.text(), place);
                case UNARY -> new Node.Unary(operator(true), one(), place);
                case BINARY -> new Node.Binary(operator(false), one(), one(), place);
                case CHOOSE -> new Node.Choose(one(), one(), one(), place);
                case FALLBACK -> new Node.Fallback(one(), one(), place);
                case SPAN -> new Node.Span(one(), one(), place);
                case AT -> new Node.At(one(), one(), place);
                case MEMBER -> member(place);
                case CALL -> call(place);
                case BLOCK -> new Node.Block(texts(), in.yes(), all(), place);
                case DEFINE -> new Node.Define(in.text(), one(), place);
                case WHEN -> new Node.When(one(), all(), all(), place);
                case CHOICE -> new Node.Choice(one(), cases(), all(), place);
                case EACH -> new Node.Each(in.text(), one(), all(), place);
            };
        }

        private Operator operator(boolean one) throws DamagedData {
            String sign = in.text();
            Optional<Operator> operator = one
                    ? Stream.of(Operator.NOT, Operator.MINUS)
                            .filter(o -> o.sign().equals(sign))
                            .findFirst()
                    : Operator.binary(sign);
            return operator.orElseThrow(() -> new DamagedData("an operator stands where it cannot"));
        }

        private Node member(Place place) throws DamagedData {
            String name = in.text();
            return new Node.Member(one(), name, place);
        }

        private Node call(Place place) throws DamagedData {
            String name = in.text();
            Optional<Node> receiver = in.yes() ? Optional.of(one()) : Optional.empty();
            List<Node> args = all();
            List<Node.Entry> named = entries();
            Optional<Node.Block> block = Optional.empty();
            if (in.yes()) {
                if (!(one() instanceof Node.Block braces)) {
                    throw new DamagedData("a word's braces are something else");
                }
                block = Optional.of(braces);
            }
            return new Node.Call(receiver, name, args, named, block, place);
        }

        private List<Node.Case> cases() throws DamagedData {
            int size = in.size(NODES);
            List<Node.Case> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(new Node.Case(all(), all()));
            }
            return list;
        }
    }
}
