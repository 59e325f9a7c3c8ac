package baywright.remote;

import baywright.library.Item;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackMaker;
import baywright.pack.Version;
import baywright.share.Choice;
import baywright.share.Clash;
import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import baywright.share.Clash.Written;
import baywright.share.DeclarationMerge;
import baywright.share.Merged;
import baywright.workspace.SharedItem;
import baywright.workspace.SharedItems;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;

/**
 * What of a pack is merged.
 *
 * @param texts    what lies below {@code stages/}, by name
 * @param items    by id
 * @param currency of their prices, where they have some
 */
record Content(SortedMap<String, String> texts, SortedMap<String, SharedItem> items, Optional<CurrencyUnit> currency) {

    private static final String ITEM = "item ";

    /** Nothing at all: what histories have in common that have nothing in common. */
    static final Content NOTHING = new Content(new TreeMap<>(), new TreeMap<>(), Optional.empty());

    Content {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
        items = Collections.unmodifiableSortedMap(new TreeMap<>(items));
    }

    static Content of(Pack pack) {
        SortedMap<String, String> texts = new TreeMap<>();
        for (String path : pack.paths()) {
            if (path.startsWith(Pack.STAGES)) {
                texts.put(
                        path.substring(Pack.STAGES.length()),
                        new String(pack.file(path).orElseThrow(), StandardCharsets.UTF_8));
            }
        }
        SharedItems shared = pack.items();
        return new Content(texts, byId(shared.items()), shared.currency());
    }

    static SortedMap<String, SharedItem> byId(List<SharedItem> items) {
        SortedMap<String, SharedItem> all = new TreeMap<>();
        items.forEach(item -> all.put(item.likeness().id(), item));
        return all;
    }

    /**
     * Two sides put together.
     *
     * @param content ours stands in it where nobody has decided
     * @param clashes what both changed differently
     * @param reads   whether what was put together can be read
     */
    record Joined(Content content, List<Clash> clashes, boolean reads) {

        Joined {
            clashes = List.copyOf(clashes);
        }

        /** Whether nobody need decide anything any more. */
        boolean isDecided() {
            return reads && clashes.stream().allMatch(c -> c.decided().isPresent());
        }
    }

    /** Merges two sides that began from a base. */
    static Joined join(Content base, Content ours, Content theirs, Choice choice) {
        Merged merged = DeclarationMerge.of(base.texts, ours.texts, theirs.texts, choice::side);
        List<Clash> clashes = new ArrayList<>(merged.clashes());
        Optional<CurrencyUnit> currency = ours.currency.equals(theirs.currency) ? ours.currency : Optional.empty();
        SortedMap<String, SharedItem> items = new TreeMap<>();
        Set<String> ids = new TreeSet<>(base.items.keySet());
        ids.addAll(ours.items.keySet());
        ids.addAll(theirs.items.keySet());
        for (String id : ids) {
            SharedItem was = unpriced(base.items.get(id), currency);
            SharedItem our = unpriced(ours.items.get(id), currency);
            SharedItem their = unpriced(theirs.items.get(id), currency);
            boolean isOurs = Objects.equals(our, their) || Objects.equals(was, their);
            boolean isTheirs = !isOurs
                    && (Objects.equals(was, our) || decided(id, was, our, their, choice, clashes) == Side.THEIRS);
            Optional.ofNullable(isTheirs ? their : our).ifPresent(item -> items.put(id, item));
        }
        return new Joined(new Content(merged.texts(), items, currency), clashes, merged.reads());
    }

    private static SharedItem unpriced(SharedItem item, Optional<CurrencyUnit> currency) {
        return item == null || currency.isPresent() ? item : new SharedItem(item.likeness(), Optional.empty());
    }

    private static Side decided(
            String id, SharedItem was, SharedItem our, SharedItem their, Choice choice, List<Clash> clashes) {
        Kind kind = was == null
                ? Kind.ADDED
                : our == null ? Kind.TAKEN_OUT_HERE : their == null ? Kind.TAKEN_OUT_THERE : Kind.CHANGED;
        Clash open =
                new Clash(ITEM + id, List.of(), kind, written(was), written(our), written(their), Optional.empty());
        Optional<Side> side = choice.side(open);
        clashes.add(new Clash(open.declaration(), open.path(), kind, open.before(), open.ours(), open.theirs(), side));
        return side.orElse(Side.OURS);
    }

    private static Optional<Written> written(SharedItem item) {
        return Optional.ofNullable(item)
                .map(one ->
                        new SharedItems(Optional.empty(), List.of(new SharedItem(one.likeness(), Optional.empty()))))
                .map(one -> new Written(Pack.ITEMS, new String(one.bytes(), StandardCharsets.UTF_8)));
    }

    /** This as it would be if only what is wanted of it had been changed since a base. */
    Content part(Content base, Choice choice) {
        if (choice.only().isEmpty()) {
            return this;
        }
        SortedMap<String, SharedItem> some = new TreeMap<>(base.items);
        SortedMap<String, String> partly = DeclarationMerge.part(base.texts, texts, choice::wants);
        String all = String.join("\n", partly.values());
        for (String id : differing(base)) {
            boolean needed = !base.items.containsKey(id) && isNamed(id, all);
            if (choice.wants(ITEM + id) || needed) {
                some.remove(id);
                Optional.ofNullable(items.get(id)).ifPresent(item -> some.put(id, item));
            }
        }
        return new Content(partly, some, currency);
    }

    static boolean isNamed(String id, String texts) {
        return texts.contains("'" + id + "'") || texts.contains("\"" + id + "\"");
    }

    /** Ids of the items that are otherwise than in another one. */
    private Set<String> differing(Content other) {
        Set<String> ids = new TreeSet<>(items.keySet());
        ids.addAll(other.items.keySet());
        ids.removeIf(id -> Objects.equals(items.get(id), other.items.get(id)));
        return ids;
    }

    /** Names of what is otherwise than in another one: declarations, files and items. */
    Set<String> differences(Content other) {
        Set<String> names = new TreeSet<>(DeclarationMerge.differences(other.texts, texts));
        differing(other).forEach(id -> names.add(ITEM + id));
        return names;
    }

    /**
     * What two sides have brought where they agree, and what was before where they do not, so that whoever has it for a base has to decide
     * again.
     */
    static Content agreed(Content base, Content one, Content other) {
        Merged merged = DeclarationMerge.agreed(base.texts, one.texts, other.texts);
        if (!merged.reads()) {
            return base;
        }
        SortedMap<String, SharedItem> items = new TreeMap<>();
        Set<String> ids = new TreeSet<>(base.items.keySet());
        ids.addAll(one.items.keySet());
        ids.addAll(other.items.keySet());
        for (String id : ids) {
            SharedItem was = base.items.get(id);
            SharedItem first = one.items.get(id);
            SharedItem second = other.items.get(id);
            boolean isFirst = Objects.equals(first, second) || Objects.equals(was, second);
            SharedItem taken = isFirst ? first : Objects.equals(was, first) ? second : was;
            Optional.ofNullable(taken).ifPresent(item -> items.put(id, item));
        }
        return new Content(merged.texts(), items, one.currency);
    }

    /**
     * The library that it makes.
     *
     * @param beside scripts of other packs, by names that no script of this one has
     * @param folder by which the cache knows it
     */
    LibraryLoader.Loaded load(Map<String, String> beside, Path folder, ScriptCache cache) {
        Map<String, String> scripts = new HashMap<>(texts);
        scripts.keySet().removeIf(name -> !name.endsWith(".groovy"));
        scripts.putAll(beside);
        List<Item> shelf = items.values().stream()
                .map(item -> item.at(item.price().orElse(BigDecimal.ZERO)))
                .toList();
        return LibraryLoader.load(folder, new LibraryFiles(scripts, List.of()), shelf, cache);
    }

    /** A pack of it, with the pages and the licence of another one. */
    Pack pack(Pack like, Version version, String who, String why) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        texts.forEach((name, text) -> files.put(Pack.STAGES + name, text.getBytes(StandardCharsets.UTF_8)));
        if (!items.isEmpty()) {
            files.put(Pack.ITEMS, new SharedItems(currency, List.copyOf(items.values())).bytes());
        }
        for (String path : like.paths()) {
            if (!path.startsWith(Pack.STAGES) && !path.equals(Pack.ITEMS)) {
                files.put(path, like.file(path).orElseThrow());
            }
        }
        Manifest manifest = like.manifest();
        return PackMaker.of(
                new PackMaker.About(
                        manifest.id(), version, who, why, manifest.licence(), manifest.needs(), currency.isPresent()),
                files);
    }
}
