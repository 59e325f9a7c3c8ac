package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.ScriptParser;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class FormatTest {

    @Test
    void shippedScriptsAreLaidOutAlready() {
        Scripts.shipped()
                .forEach((name, text) -> assertThat(Format.of(text)).as(name).isEqualTo(text));
    }

    @Test
    void anUntidyStageIsLaidOut() {
        assertThat(Format.of("""


                  stage( 'x' ){
                title   'X'


                  inputs{ count 'passes',from:1,to : 3,usual:1 }
                \ttime {
                attended 1.min,2.min ,3.min,per:'m2',
                times:passes    // by hand
                if(passes>1&&!heavy){
                people heavy?2:1
                }else{
                people 1
                }
                switch(load){
                case 'a':
                people 1
                break
                default:
                people 2
                }
                ['a','b'].each{ x->needs x }
                def late=passes-1
                }
                checks { }
                }""")).isEqualTo("""
                stage('x') {
                    title 'X'

                    inputs { count 'passes', from: 1, to: 3, usual: 1 }
                    time {
                        attended 1.min, 2.min, 3.min, per: 'm2',
                                times: passes    // by hand
                        if (passes > 1 && !heavy) {
                            people heavy ? 2 : 1
                        } else {
                            people 1
                        }
                        switch (load) {
                            case 'a':
                                people 1
                                break
                            default:
                                people 2
                        }
                        ['a', 'b'].each { x -> needs x }
                        def late = passes-1
                    }
                    checks { }
                }
                """);
    }

    @Test
    void whatBlanksDecideStaysAsItIs() {
        assertThat(Format.of("attended -5\nworksOn [1]\nx[1]\ny = -5.min\nf(-1)\nz 3.min - 1.min\n"))
                .isEqualTo("attended -5\nworksOn [1]\nx[1]\ny = -5.min\nf(-1)\nz 3.min - 1.min\n");
    }

    @Test
    void commentsAndTextsStay() {
        String text = "/* a\n   b */\ntitle 'a,b:c{'   // d,e\nabout '''x\n  ,y'''\n";
        assertThat(Format.of(text)).isEqualTo(text);
    }

    @Test
    void lineEndsOfOtherSystemsBecomePlainOnes() {
        assertThat(Format.of("a 1\r\nb 2\r\r\nc 3")).isEqualTo("a 1\nb 2\n\nc 3\n");
    }

    @Test
    void aMarkBehindBlanksIsTheFirstThing() {
        String once = Format.of(" \uFEFF:// c ");
        assertThat(once).startsWith("\uFEFF");
        assertThat(Format.of(once)).isEqualTo(once);
    }

    @Property(tries = 200)
    void formattingAgainChangesNothing(@ForAll("texts") String text) {
        String once = Format.of(text);
        assertThat(Format.of(once)).isEqualTo(once);
    }

    @Property(tries = 300)
    void onlyBlanksAndEmptyLinesChange(@ForAll("texts") String text) {
        assertThat(bare(Format.of(text))).isEqualTo(bare(text));
    }

    /** Blanks taken out of a shipped script, and put into it, make no difference once it is laid out. */
    @Property(tries = 12)
    void aDisorderedScriptIsReadAsBefore(@ForAll long seed) {
        Random random = new Random(seed);
        List<Map.Entry<String, String>> all = List.copyOf(Scripts.shipped().entrySet());
        String text = all.get(random.nextInt(all.size())).getValue();
        String untidy = text.lines()
                .map(l -> " ".repeat(random.nextInt(9)) + l.strip() + " ".repeat(random.nextInt(3)))
                .reduce("", (a, b) -> a + b + "\n" + (random.nextInt(9) == 0 ? "\n" : ""));
        String tidy = Format.of(untidy);
        assertThat(shape(tidy)).isEqualTo(shape(text));
    }

    /** The statements without their places. */
    private static String shape(String text) {
        return ScriptParser.parse("x", text).body().toString().replaceAll("place=x:\\d+:\\d+", "");
    }

    private static String bare(String text) {
        return text.replaceAll("[ \\t\\f\\r\\n]", "");
    }

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> piece = Arbitraries.of(
                "stage('x')",
                " {",
                "}",
                "\n",
                "\n",
                " ",
                "title 'a'",
                ",",
                ":",
                "?",
                "[",
                "]",
                "(",
                ")",
                "-",
                "+",
                "==",
                "..",
                "3.min",
                "// c",
                "/* d\n */",
                "case 'a':",
                "switch (x)",
                "'''a\nb'''",
                "\"${x}\"",
                "\t",
                "\r\n",
                "'open",
                "->",
                "def x =",
                "é",
                "\uFEFF",
                "if",
                "else",
                ";",
                "\\");
        return piece.list().ofMaxSize(40).map(l -> String.join("", l));
    }
}
