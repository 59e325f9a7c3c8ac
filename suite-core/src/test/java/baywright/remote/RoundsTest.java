package baywright.remote;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.ScriptCache;
import baywright.share.Choice;
import baywright.share.Clash;
import baywright.share.Clash.Side;
import baywright.share.DeclarationMerge;
import baywright.share.Taking;
import baywright.share.Texts;
import baywright.share.TwoSites;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Three sites that edit, follow, propose and accept at random, through a real repository. */
class RoundsTest {

    private static final int ROUNDS = 200;
    private static final int MOST_PASSES = 6;

    /** New stages and checks together: what follows are changes, so that the scripts stay small. */
    private static final int MOST_MARKS = 16;

    private static final Pattern MINUTES = Pattern.compile("attended (\\d+)\\.min, \\d+\\.min, \\d+\\.min");
    private static final Pattern STAGE = Pattern.compile("stage\\('([a-z0-9-]+)'\\)");

    @Property(tries = 1, shrinking = net.jqwik.api.ShrinkingMode.OFF)
    void theyComeTogetherAndNothingIsLost(@ForAll long seed) throws IOException {
        Path folder = Files.createTempDirectory("rounds");
        try {
            new Rounds(folder, new Random(seed)).play();
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static final class Rounds {
        private final Random random;
        private final ScriptCache cache;
        private final Sites sites;
        private final List<Sites.Site> all = new ArrayList<>();
        private final Map<Sites.Site, SharedLibrary> libraries = new HashMap<>();
        /** What nobody ever takes out: ids of stages and texts of checks. */
        private final Set<String> marks = new TreeSet<>();

        private final Set<Integer> written = new TreeSet<>();
        private final Set<Integer> decidedAgainst = new HashSet<>();
        private Set<String> onMain = Set.of();
        private int next = 100;

        Rounds(Path folder, Random random) {
            this.random = random;
            this.cache = ScriptCache.in(folder.resolve("kept"));
            this.sites = Sites.in(folder);
            for (String id : List.of("mill", "quay", "lane")) {
                Sites.Site site = sites.follower(id);
                all.add(site);
                libraries.put(site, site.opened());
            }
        }

        void play() {
            for (int round = 0; round < ROUNDS; round++) {
                Sites.Site site = any(all);
                edit(site);
                int what = random.nextInt(8);
                if (what < 2) {
                    follow(site, () -> any(List.of(Side.values())));
                } else if (what == 2) {
                    publish(site);
                } else if (what == 3) {
                    acceptAny(site);
                }
            }
            settle();
            check();
            libraries.values().forEach(SharedLibrary::close);
        }

        private <T> T any(List<T> of) {
            return of.get(random.nextInt(of.size()));
        }

        // editing

        private void edit(Sites.Site site) {
            String mark = "m" + next++;
            int kind = random.nextInt(12);
            String file = any(scripts(site));
            String text = site.had(file);
            if (kind == 0 && marks.size() < MOST_MARKS) {
                site.have("stages/" + mark + ".groovy", TwoSites.stage(mark, 3));
                marks.add(mark);
            } else if (kind < 5 && marks.size() < MOST_MARKS) {
                int at = any(places(text, "    checks {\n")) + "    checks {\n".length();
                site.have(file, text.substring(0, at) + "        confirm '" + mark + "'\n" + text.substring(at));
                marks.add(mark);
            } else {
                Matcher match = MINUTES.matcher(text);
                int stages = (int) STAGE.matcher(text).results().count();
                for (int i = random.nextInt(stages); i >= 0; i--) {
                    assertThat(match.find()).isTrue();
                }
                // whoever changes a time has seen what it was
                decidedAgainst.add(Integer.parseInt(match.group(1)));
                written.add(next);
                site.have(
                        file,
                        text.substring(0, match.start())
                                + "attended %d.min, %d.min, %d.min".formatted(next, next + 1, next + 2)
                                + text.substring(match.end()));
            }
        }

        private static List<String> scripts(Sites.Site site) {
            return new Texts(site.root)
                    .below("stages").entrySet().stream()
                            .filter(e -> STAGE.matcher(e.getValue()).find())
                            .map(e -> "stages/" + e.getKey())
                            .toList();
        }

        private static List<Integer> places(String text, String of) {
            List<Integer> places = new ArrayList<>();
            for (int at = text.indexOf(of); at >= 0; at = text.indexOf(of, at + 1)) {
                places.add(at);
            }
            return places;
        }

        // sharing

        /** Decides each clash that there is, and remembers what was decided against. */
        private Choice decide(List<Clash> clashes, java.util.function.Supplier<Side> by) {
            Map<String, Side> sides = new HashMap<>();
            for (Clash clash : clashes) {
                Side side = by.get();
                sides.put(clash.name(), side);
                Optional<Clash.Written> lost = side == Side.OURS ? clash.theirs() : clash.ours();
                lost.ifPresent(text -> {
                    Matcher match = MINUTES.matcher(text.text());
                    while (match.find()) {
                        decidedAgainst.add(Integer.parseInt(match.group(1)));
                    }
                    marks.forEach(mark -> assertThat(text.text()).doesNotContain("'" + mark + "'"));
                });
            }
            return new Choice(Set.of(), sides, false);
        }

        private void follow(Sites.Site site, java.util.function.Supplier<Side> by) {
            SharedLibrary library = libraries.get(site);
            assertThat(library.fetch(Watch.NOBODY).isRewritten()).isFalse();
            Taking open = library.taking(site.workspace(), Choice.ALL, cache);
            Taking taking = open.isReady() ? open : library.taking(site.workspace(), decide(open.clashes(), by), cache);
            taking.take(Sites.YES, Sites.CLOCK);
        }

        private void publish(Sites.Site site) {
            SharedLibrary library = libraries.get(site);
            Draft draft = library.draft(site.workspace(), Choice.ALL, cache);
            if (!draft.isEmpty()) {
                assertThat(library.publish(draft, site.id(), "round", Sites.NO_KEY, Watch.NOBODY)
                                .isSent())
                        .isTrue();
            }
        }

        private void acceptAny(Sites.Site site) {
            SharedLibrary library = libraries.get(site);
            library.fetch(Watch.NOBODY);
            List<Proposal> open = library.proposals();
            if (!open.isEmpty()) {
                accept(site, any(open), () -> any(List.of(Side.values())));
            }
        }

        private void accept(Sites.Site site, Proposal proposal, java.util.function.Supplier<Side> by) {
            SharedLibrary library = libraries.get(site);
            Acceptance open = library.acceptance(site.workspace(), proposal, Choice.ALL, cache);
            Acceptance ready = open.isReady()
                    ? open
                    : library.acceptance(site.workspace(), proposal, decide(open.clashes(), by), cache);
            library.accept(site.workspace(), ready, Optional.empty(), site.id(), Sites.NO_KEY, Sites.YES, Watch.NOBODY);
            Set<String> now = marksIn(String.join("\n", library.main().scripts().values()));
            assertThat(now).as("the main line loses nothing that it had").containsAll(onMain);
            onMain = now;
        }

        private Set<String> marksIn(String text) {
            Set<String> in = new HashSet<>(marks);
            in.removeIf(mark -> !text.contains("'" + mark + "'"));
            return in;
        }

        // the end

        private boolean isSettled() {
            return all.stream().allMatch(site -> {
                SharedLibrary library = libraries.get(site);
                library.fetch(Watch.NOBODY);
                return library.state().isUpToDate()
                        && library.draft(site.workspace(), Choice.ALL, cache).isEmpty()
                        && library.proposals().isEmpty();
            });
        }

        private void settle() {
            int passes = 0;
            while (!isSettled()) {
                assertThat(++passes).as("passes until they agree").isLessThanOrEqualTo(MOST_PASSES);
                for (Sites.Site site : all) {
                    follow(site, () -> Side.THEIRS);
                    publish(site);
                    libraries.get(site).fetch(Watch.NOBODY);
                    libraries.get(site).proposals().forEach(p -> accept(site, p, () -> Side.THEIRS));
                }
            }
        }

        private void check() {
            Map<String, String> first = new Texts(all.get(0).root).below("stages");
            for (Sites.Site site : all) {
                Map<String, String> stages = new Texts(site.root).below("stages");
                assertThat(DeclarationMerge.differences(first, stages)).isEmpty();
                String text = String.join("\n", stages.values());
                assertThat(marksIn(text)).isEqualTo(marks);
                Set<Integer> lost = new TreeSet<>(written);
                lost.removeAll(decidedAgainst);
                lost.removeIf(minutes -> text.contains("attended " + minutes + ".min"));
                assertThat(lost).as("times that nobody decided against").isEmpty();
            }
        }
    }
}
