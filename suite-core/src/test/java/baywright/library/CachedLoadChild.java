package baywright.library;

import baywright.library.LibraryLoader.Loaded;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A program of its own that loads a library with a cache and asks every stage for its terms. */
final class CachedLoadChild {

    private CachedLoadChild() {}

    public static void main(String[] args) throws IOException {
        Loaded loaded = LibraryLoader.load(
                Path.of(args[0]), List.of(Libraries.IRON_REMOVER, Libraries.CLAY), ScriptCache.in(Path.of(args[1])));
        loaded.library().stages().forEach(Stage::usualTerms);
        System.out.print("stages " + loaded.library().stages().size() + ", notes " + loaded.notes() + "\n");
    }
}
