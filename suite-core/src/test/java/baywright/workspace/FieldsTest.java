package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class FieldsTest {

    @Property
    void anIdIsWhatItsPatternSays(@ForAll("nearlyIds") String text) {
        assertThat(Fields.isId(text))
                .isEqualTo(Fields.ID.matcher(text).matches() && text.length() <= Fields.LONGEST_ID);
    }

    @Provide
    Arbitrary<String> nearlyIds() {
        return Arbitraries.oneOf(
                Arbitraries.strings().withChars("ab09-").ofMaxLength(5),
                Arbitraries.strings().withChars("a-").ofMinLength(57).ofMaxLength(62),
                Arbitraries.strings().withChars("aZ_é/. -`{:").ofMaxLength(4));
    }
}
