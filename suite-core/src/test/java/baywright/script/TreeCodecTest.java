package baywright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Trees come back as they were, and damaged bytes give damage or a tree, never anything worse. */
class TreeCodecTest {

    private static final String FILE = "iron/removal.groovy";

    @Property(tries = 300)
    void aTreeComesBackAsItWas(@ForAll long seed) throws DamagedData {
        List<Node> body = new Trees(seed).statements(4);

        assertThat(TreeCodec.decode(FILE, TreeCodec.encode(body).orElseThrow())).isEqualTo(body);
    }

    @Property(tries = 600)
    void bytesWithOneChangedGiveATreeOrDamage(
            @ForAll long seed, @ForAll @IntRange(min = 0) int where, @ForAll @IntRange(min = 1, max = 255) int flip) {
        byte[] bytes = TreeCodec.encode(new Trees(seed).statements(3)).orElseThrow();
        bytes[where % bytes.length] ^= (byte) flip;

        try {
            TreeCodec.encode(TreeCodec.decode(FILE, bytes));
        } catch (DamagedData e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }

    @Property(tries = 200)
    void aCutTreeIsDamaged(@ForAll long seed, @ForAll @IntRange(min = 0) int where) {
        byte[] bytes = TreeCodec.encode(new Trees(seed).statements(3)).orElseThrow();
        byte[] cut = Arrays.copyOf(bytes, where % bytes.length);

        assertThatThrownBy(() -> TreeCodec.decode(FILE, cut)).isInstanceOf(DamagedData.class);
    }

    @Test
    void aForgedTreeThatWouldOverflowTheStackIsDamaged() {
        byte[] deep = new byte[400_000];
        for (int i = 0; i + 5 <= deep.length; i += 4) {
            deep[i] = 1; // one item
            deep[i + 1] = 6; // which is a list
            deep[i + 2] = 1;
            deep[i + 3] = 1;
        }
        assertThatThrownBy(() -> TreeCodec.decode(FILE, deep))
                .isInstanceOf(DamagedData.class)
                .hasMessage("a script is nested too deeply or too large");
    }

    @Test
    void aForgedSizeAsksForNoMoreMemoryThanThereAreBytes() {
        byte[] huge = {(byte) 0xff, (byte) 0xff, (byte) 0xff, (byte) 0xff, 0x07, 0};

        assertThatThrownBy(() -> TreeCodec.decode(FILE, huge)).isInstanceOf(DamagedData.class);
    }

    @Test
    void aTreeTooDeepToReadBackIsNotKept() {
        Place place = new Place(FILE, 1, 1);
        Node deep = new Node.Name("a", place);
        for (int i = 0; i < 2_000; i++) {
            deep = new Node.Unary(Operator.MINUS, deep, place);
        }
        assertThat(TreeCodec.encode(List.of(deep))).isEmpty();
    }

    @Test
    void aForgedTextWithHiddenCharactersIsDamaged() {
        Place place = new Place(FILE, 1, 1);
        byte[] bytes =
                TreeCodec.encode(List.of(new Node.Literal("\u00e9", place))).orElseThrow();
        bytes[bytes.length - 1] = (byte) 0x85; // a control character

        assertThatThrownBy(() -> TreeCodec.decode(FILE, bytes)).isInstanceOf(DamagedData.class);
    }

    /** Random trees of every kind of node. */
    private static final class Trees {
        private static final List<String> TEXTS =
                List.of("", "wet", "a text", "caf\u00e9", "\u4e94\u5206", "\ud83d\ude97 car", "wet", "x-1");
        private final Random random;

        Trees(long seed) {
            this.random = new Random(seed);
        }

        private Place place() {
            return new Place(FILE, 1 + random.nextInt(70_000), 1 + random.nextInt(300));
        }

        private String text() {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        }

        private BigDecimal number() {
            return new BigDecimal(new BigInteger(random.nextInt(100), random), random.nextInt(61) - 30)
                    .multiply(random.nextBoolean() ? BigDecimal.ONE : BigDecimal.ONE.negate());
        }

        List<Node> statements(int depth) {
            List<Node> list = new ArrayList<>();
            for (int i = random.nextInt(4); i >= 0; i--) {
                list.add(node(depth));
            }
            return list;
        }

        private Node.Entry entry(int depth) {
            return new Node.Entry(node(depth), node(depth));
        }

        private Node.Block block(int depth) {
            return new Node.Block(List.of("it", "x"), random.nextBoolean(), statements(depth), place());
        }

        private Node leaf() {
            return switch (random.nextInt(5)) {
                case 0 -> new Node.Literal(number(), place());
                case 1 -> new Node.Literal(text(), place());
                case 2 -> new Node.Literal(random.nextBoolean(), place());
                case 3 -> new Node.Literal(Value.NOTHING, place());
                default -> new Node.Name(text(), place());
            };
        }

        private Node node(int depth) {
            if (depth == 0) {
                return leaf();
            }
            int d = depth - 1;
            return switch (random.nextInt(17)) {
                case 0 -> new Node.Template(statements(d), place());
                case 1 -> new Node.Items(statements(d), place());
                case 2 -> new Node.Entries(List.of(entry(d), entry(d)), place());
                case 3 -> new Node.Unary(random.nextBoolean() ? Operator.NOT : Operator.MINUS, node(d), place());
                case 4 ->
                    new Node.Binary(List.of(Operator.values()).get(random.nextInt(15)), node(d), node(d), place());
                case 5 -> new Node.Choose(node(d), node(d), node(d), place());
                case 6 -> new Node.Fallback(node(d), node(d), place());
                case 7 -> new Node.Span(node(d), node(d), place());
                case 8 -> new Node.At(node(d), node(d), place());
                case 9 -> new Node.Member(node(d), text(), place());
                case 10 ->
                    new Node.Call(
                            random.nextBoolean() ? Optional.of(node(d)) : Optional.empty(),
                            text(),
                            statements(d),
                            List.of(entry(d)),
                            random.nextBoolean() ? Optional.of(block(d)) : Optional.empty(),
                            place());
                case 11 -> block(d);
                case 12 -> new Node.Define(text(), node(d), place());
                case 13 -> new Node.When(node(d), statements(d), statements(d), place());
                case 14 ->
                    new Node.Choice(
                            node(d), List.of(new Node.Case(statements(d), statements(d))), statements(d), place());
                case 15 -> new Node.Each(text(), node(d), statements(d), place());
                default -> leaf();
            };
        }
    }
}
