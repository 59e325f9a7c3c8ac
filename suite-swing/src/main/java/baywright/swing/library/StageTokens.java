package baywright.swing.library;

import baywright.library.StageLanguage;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fife.ui.rsyntaxtextarea.TokenTypes;
import org.fife.ui.rsyntaxtextarea.modes.GroovyTokenMaker;

/** Tokens of a stage script for its colours: Groovy's, with the words of the stage language told apart. */
final class StageTokens extends GroovyTokenMaker {

    private static final Set<String> WORDS = Stream.concat(
                    StageLanguage.VOCABULARY.sections().stream().flatMap(s -> s.names().stream()),
                    StageLanguage.VOCABULARY.functions().stream().map(w -> w.name()))
            .collect(Collectors.toUnmodifiableSet());

    @Override
    public void addToken(char[] array, int start, int end, int type, int startOffset, boolean hyperlink) {
        boolean word = type == TokenTypes.IDENTIFIER && WORDS.contains(new String(array, start, end - start + 1));
        super.addToken(array, start, end, word ? TokenTypes.RESERVED_WORD_2 : type, startOffset, hyperlink);
    }
}
