package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.LibraryLoader;
import baywright.library.LibraryLoader.Loaded;
import baywright.library.SameLibrary;
import baywright.library.ScriptCache;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The standard library is the same whether its scripts are read or were kept. */
class CachedLibraryTest {

    @Test
    void theKeptLibraryIsTheOneThatWasRead(@TempDir Path cache) throws IOException {
        Loaded read = LibraryLoader.load(Shipped.STAGES, Shipped.items(), ScriptCache.in(cache));
        Loaded kept = LibraryLoader.load(Shipped.STAGES, Shipped.items(), ScriptCache.in(cache));

        assertThat(read.notes()).isEmpty();
        assertThat(kept.notes()).isEmpty();
        SameLibrary.check(kept, read);
    }
}
