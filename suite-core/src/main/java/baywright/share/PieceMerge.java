package baywright.share;

import baywright.editor.Piece;
import baywright.editor.Pieces;
import baywright.share.Clash.Kind;
import baywright.share.Clash.Side;
import baywright.share.Clash.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Merges one declaration of three versions down to the lines of its blocks. */
final class PieceMerge {

    private static final String HEAD = "first line";
    private static final String COMMENT = "comment";

    private final String declaration;
    private final Files files;
    private final Function<Clash, Optional<Side>> decide;
    private final boolean former;
    private final List<Clash> clashes;

    /** Whose is taken. */
    private enum Taken {
        OURS,
        THEIRS,
        /** What both began from. */
        BASE;

        <T> T of(T base, T ours, T theirs) {
            return switch (this) {
                case OURS -> ours;
                case THEIRS -> theirs;
                case BASE -> base;
            };
        }
    }

    /** The files in which the three versions have the declaration; the empty text where they have none. */
    record Files(String base, String ours, String theirs) {}

    /** @param former whether what both began from is taken where nobody decides, instead of ours */
    PieceMerge(
            String declaration,
            Files files,
            Function<Clash, Optional<Side>> decide,
            boolean former,
            List<Clash> clashes) {
        this.declaration = declaration;
        this.files = files;
        this.decide = decide;
        this.former = former;
        this.clashes = clashes;
    }

    /** What becomes of a statement; empty: it is not there. */
    Optional<Piece> merge(List<String> path, Optional<Piece> base, Optional<Piece> ours, Optional<Piece> theirs) {
        if (ours.isPresent() && theirs.isPresent()) {
            return base.isPresent()
                    ? Optional.of(changed(path, base.get(), ours.get(), theirs.get()))
                    : added(path, ours.get(), theirs.get());
        }
        if (base.isEmpty()) {
            return ours.or(() -> theirs);
        }
        Optional<Piece> left = ours.or(() -> theirs);
        if (left.isEmpty() || Pieces.alike(left.get().core(), base.get().core())) {
            return Optional.empty();
        }
        Kind kind = ours.isEmpty() ? Kind.TAKEN_OUT_HERE : Kind.TAKEN_OUT_THERE;
        return taken(path, kind, base.map(Piece::core), ours.map(Piece::core), theirs.map(Piece::core))
                .of(base, ours, theirs);
    }

    private Optional<Piece> added(List<String> path, Piece ours, Piece theirs) {
        if (!Pieces.alike(ours.core(), theirs.core())) {
            return taken(path, Kind.ADDED, Optional.empty(), Optional.of(ours.core()), Optional.of(theirs.core()))
                    .of(Optional.empty(), Optional.of(ours), Optional.of(theirs));
        }
        Piece shorter = ours.core().compareTo(theirs.core()) <= 0 ? ours : theirs;
        return Optional.of(shorter.with(
                trivia(path, "", ours.lead(), theirs.lead()),
                shorter.head(),
                shorter.body(),
                shorter.end(),
                trivia(path, "", ours.trail(), theirs.trail())));
    }

    private Piece changed(List<String> path, Piece base, Piece ours, Piece theirs) {
        String lead = trivia(path, base.lead(), ours.lead(), theirs.lead());
        String trail = trivia(path, base.trail(), ours.trail(), theirs.trail());
        boolean blocks = Stream.of(base, ours, theirs).allMatch(Piece::isBlock);
        if (!blocks) {
            Piece taken = code(path, base.core(), ours.core(), theirs.core()).of(base, ours, theirs);
            return taken.with(lead, taken.head(), taken.body(), taken.end(), trail);
        }
        Piece taken =
                code(with(path, HEAD), base.head(), ours.head(), theirs.head()).of(base, ours, theirs);
        List<Piece> body = body(path, base.body(), ours.body(), theirs.body());
        return taken.with(lead, taken.head(), body, trivia(path, base.end(), ours.end(), theirs.end()), trail);
    }

    private List<Piece> body(List<String> path, List<Piece> base, List<Piece> ours, List<Piece> theirs) {
        Keys.Found found = Keys.find(base, ours, theirs, Keys::of);
        Map<Piece, String> baseIds = Keys.idOf(found.base());
        Map<Piece, String> ourIds = Keys.idOf(found.ours());
        Map<Piece, String> theirIds = Keys.idOf(found.theirs());
        List<String> order = Sequence.of(
                base.stream().map(baseIds::get).toList(),
                ours.stream().map(ourIds::get).toList(),
                theirs.stream().map(theirIds::get).toList(),
                id -> Optional.ofNullable(found.ours().get(id))
                        .orElseGet(() -> found.theirs().get(id))
                        .text());
        List<Piece> merged = new ArrayList<>();
        for (String id : order) {
            merge(
                            with(path, id),
                            Optional.ofNullable(found.base().get(id)),
                            Optional.ofNullable(found.ours().get(id)),
                            Optional.ofNullable(found.theirs().get(id)))
                    .ifPresent(merged::add);
        }
        return parted(merged);
    }

    /** Statements of different versions may need a line end between them. */
    static List<Piece> parted(List<Piece> pieces) {
        List<Piece> parted = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean last = i == pieces.size() - 1;
            String trail = piece.trail();
            boolean parts = last
                    || trail.endsWith("\n")
                    || trail.endsWith("\r")
                    || trail.stripTrailing().endsWith(";");
            parted.add(parts ? piece : piece.with(piece.lead(), piece.head(), piece.body(), piece.end(), trail + "\n"));
        }
        return parted;
    }

    /** Whose code it is; the same words in another layout are no change. */
    private Taken code(List<String> path, String base, String ours, String theirs) {
        if (ours.equals(theirs) || base.equals(theirs)) {
            return Taken.OURS;
        }
        if (base.equals(ours)) {
            return Taken.THEIRS;
        }
        if (Pieces.alike(ours, theirs)) {
            return ours.compareTo(theirs) <= 0 ? Taken.OURS : Taken.THEIRS;
        }
        if (Pieces.alike(base, theirs)) {
            return Taken.OURS;
        }
        if (Pieces.alike(base, ours)) {
            return Taken.THEIRS;
        }
        return taken(path, Kind.CHANGED, Optional.of(base), Optional.of(ours), Optional.of(theirs));
    }

    private String trivia(List<String> path, String base, String ours, String theirs) {
        return Trivia.merge(base, ours, theirs).orElseGet(() -> {
            return taken(with(path, COMMENT), Kind.COMMENT, Optional.of(base), Optional.of(ours), Optional.of(theirs))
                    .of(base, ours, theirs);
        });
    }

    private Taken taken(
            List<String> path, Kind kind, Optional<String> base, Optional<String> ours, Optional<String> theirs) {
        Clash open = new Clash(
                declaration,
                path,
                kind,
                base.map(t -> new Written(files.base(), t)),
                ours.map(t -> new Written(files.ours(), t)),
                theirs.map(t -> new Written(files.theirs(), t)),
                Optional.empty());
        Optional<Side> decided = decide.apply(open);
        clashes.add(new Clash(declaration, path, kind, open.before(), open.ours(), open.theirs(), decided));
        if (decided.isEmpty()) {
            return former ? Taken.BASE : Taken.OURS;
        }
        return decided.get() == Side.OURS ? Taken.OURS : Taken.THEIRS;
    }

    private static List<String> with(List<String> path, String step) {
        List<String> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }
}
