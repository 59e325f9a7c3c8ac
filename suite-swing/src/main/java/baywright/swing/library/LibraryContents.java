package baywright.swing.library;

import baywright.editor.Outline;
import baywright.library.Item;
import baywright.script.Problem;
import baywright.site.OpenShop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the scripts of a shop declare, by families and kinds, made out from their texts alone: a script with errors stands here as
 * well.
 *
 * @param groups families with their stages first, then the other kinds
 * @param count  of everything in them
 */
record LibraryContents(List<Group> groups, int count) {

    /** Kinds of declarations beside stages, in the order in which they are shown. */
    private static final List<String> KINDS =
            List.of("rule", "goal", "state", "fact", "factor", "surface", "family", "constant");

    /**
     * Things that belong together.
     *
     * @param kind  {@code stage} for a family's stages, else the word that declares them, {@code item} or {@code script}
     * @param title of the family; empty for the other kinds
     */
    record Group(String kind, String title, List<Entry> entries) {
        Group {
            entries = List.copyOf(entries);
        }

        long errors() {
            return entries.stream().filter(e -> e.grade() == Grade.ERROR).count();
        }
    }

    /** What is wrong with an entry at worst. */
    enum Grade {
        FINE,
        WARNING,
        ERROR
    }

    /**
     * One declaration.
     *
     * @param kind  the word that declares it; {@code item} for an entry of the price list, {@code script} for a file that declares nothing
     * @param id    its id
     * @param title words for people; may be empty
     * @param file  script that declares it; empty for an item
     * @param line  from 1
     * @param grade what is wrong with it
     * @param words everything that a search looks through, in lower case
     */
    record Entry(String kind, String id, String title, String file, int line, Grade grade, String words) {

        /** Whether every word of a search is found. */
        boolean matches(String search) {
            for (String word : search.toLowerCase(Locale.ROOT).strip().split("\\s+", -1)) {
                if (!words.contains(word)) {
                    return false;
                }
            }
            return true;
        }

        String shown() {
            return title.isEmpty() ? id : title;
        }
    }

    /** Outlines of texts by name, kept as long as the text is the same. */
    static final class Reader {
        private record Read(String text, List<Outline.Entry> outline) {}

        private final Map<String, Read> known = new HashMap<>();

        private synchronized List<Outline.Entry> outline(String file, String text) {
            Read read = known.get(file);
            if (read == null || !read.text().equals(text)) {
                read = new Read(text, Outline.of(file, text));
                known.put(file, read);
            }
            return read.outline();
        }

        /** What a shop's scripts declare, with the problems of the last load. */
        LibraryContents read(OpenShop shop, List<Problem> problems) {
            Map<String, List<Problem>> wrong = new HashMap<>();
            problems.forEach(p -> wrong.computeIfAbsent(p.place().file(), f -> new ArrayList<>())
                    .add(p));
            List<Entry> all = new ArrayList<>();
            Map<String, String> families = new TreeMap<>();
            Map<String, String> familyOf = new HashMap<>();
            shop.texts().forEach((file, text) -> {
                List<Outline.Entry> outline = outline(file, text);
                if (outline.isEmpty()) {
                    all.add(entry("script", file, "", file, 1, Integer.MAX_VALUE, text, wrong));
                }
                for (int i = 0; i < outline.size(); i++) {
                    Outline.Entry declared = outline.get(i);
                    int end =
                            i + 1 < outline.size() ? outline.get(i + 1).place().line() : Integer.MAX_VALUE;
                    Entry entry = entry(
                            declared.word(),
                            declared.label().isEmpty() ? file : declared.label(),
                            title(declared, text),
                            file,
                            i == 0 ? 1 : declared.place().line(),
                            end,
                            text.substring(declared.from(), declared.to()),
                            wrong);
                    all.add(at(entry, declared.place().line()));
                    if (declared.word().equals("family")) {
                        families.put(declared.label(), entry.title());
                    }
                    child(declared, "family").ifPresent(f -> familyOf.put(file + declared.label(), f));
                }
            });
            return grouped(all, families, familyOf, shop.items());
        }

        private static Entry at(Entry entry, int line) {
            return new Entry(entry.kind(), entry.id(), entry.title(), entry.file(), line, entry.grade(), entry.words());
        }

        private static Entry entry(
                String kind,
                String id,
                String title,
                String file,
                int from,
                int to,
                String text,
                Map<String, List<Problem>> wrong) {
            Grade grade = Grade.FINE;
            for (Problem problem : wrong.getOrDefault(file, List.of())) {
                if (problem.place().line() >= from && problem.place().line() < to
                        || problem.place().line() == 0) {
                    boolean error = problem.severity() == Problem.Severity.ERROR;
                    grade = error || grade == Grade.ERROR ? Grade.ERROR : Grade.WARNING;
                }
            }
            String words = (id + " " + title + " " + text).toLowerCase(Locale.ROOT);
            return new Entry(kind, id, title, file, from, grade, words);
        }

        private static String title(Outline.Entry declared, String text) {
            return child(declared, "title").orElseGet(() -> named(text.substring(declared.from(), declared.to())));
        }

        /** The text behind {@code title:} or {@code means:} of a declaration in one line. */
        private static String named(String text) {
            int line = text.indexOf('\n');
            String first = line < 0 ? text : text.substring(0, line);
            for (String name : List.of("title: '", "means: '")) {
                int from = first.indexOf(name);
                int to = from < 0 ? -1 : first.indexOf('\'', from + name.length());
                if (to > from) {
                    return first.substring(from + name.length(), to);
                }
            }
            return "";
        }

        private static Optional<String> child(Outline.Entry declared, String word) {
            return declared.children().stream()
                    .filter(c -> c.word().equals(word))
                    .map(Outline.Entry::label)
                    .filter(l -> !l.isEmpty())
                    .findFirst();
        }

        private static LibraryContents grouped(
                List<Entry> all, Map<String, String> families, Map<String, String> familyOf, List<Item> items) {
            Map<String, List<Entry>> stages = new LinkedHashMap<>();
            families.keySet().forEach(f -> stages.put(f, new ArrayList<>()));
            Map<String, List<Entry>> others = new LinkedHashMap<>();
            KINDS.forEach(k -> others.put(k, new ArrayList<>()));
            for (Entry entry : all) {
                if (entry.kind().equals("stage")) {
                    String family = familyOf.getOrDefault(entry.file() + entry.id(), "");
                    stages.computeIfAbsent(family, f -> new ArrayList<>()).add(entry);
                } else {
                    others.computeIfAbsent(entry.kind(), k -> new ArrayList<>()).add(entry);
                }
            }
            others.put(
                    "item",
                    items.stream()
                            .map(i -> new Entry(
                                    "item",
                                    i.id(),
                                    i.title(),
                                    "",
                                    0,
                                    Grade.FINE,
                                    (i.id() + " " + i.title() + " " + i.note()).toLowerCase(Locale.ROOT)))
                            .toList());
            List<Group> groups = new ArrayList<>();
            stages.forEach((family, entries) -> {
                if (!entries.isEmpty()) {
                    groups.add(new Group("stage", families.getOrDefault(family, family), entries));
                }
            });
            others.forEach((kind, entries) -> {
                if (!entries.isEmpty()) {
                    groups.add(new Group(kind, "", entries));
                }
            });
            return new LibraryContents(
                    groups, groups.stream().mapToInt(g -> g.entries().size()).sum());
        }
    }

    LibraryContents {
        groups = List.copyOf(groups);
    }

    /** What is left of it when a search is typed; all of it for blanks. */
    LibraryContents found(String search) {
        if (search.isBlank()) {
            return this;
        }
        List<Group> left = groups.stream()
                .map(g -> new Group(
                        g.kind(),
                        g.title(),
                        g.entries().stream().filter(e -> e.matches(search)).toList()))
                .filter(g -> !g.entries().isEmpty())
                .toList();
        return new LibraryContents(
                left, left.stream().mapToInt(g -> g.entries().size()).sum());
    }

    /** The entry with a kind and an id. */
    Optional<Entry> find(String kind, String id) {
        return groups.stream()
                .flatMap(g -> g.entries().stream())
                .filter(e -> e.kind().equals(kind) && e.id().equals(id))
                .findFirst();
    }

    /** The last entry of a file that begins at a line or before it; the first one of the file where none does. */
    Optional<Entry> at(String file, int line) {
        List<Entry> ofFile = groups.stream()
                .flatMap(g -> g.entries().stream())
                .filter(e -> e.file().equals(file))
                .sorted(Comparator.comparingInt(Entry::line))
                .toList();
        return ofFile.stream()
                .filter(e -> e.line() <= line)
                .reduce((a, b) -> b)
                .or(() -> ofFile.stream().findFirst());
    }
}
