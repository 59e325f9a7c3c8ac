package baywright.remote;

import baywright.pack.PackRefused;
import baywright.share.Choice;
import baywright.share.Clash.Side;
import baywright.share.DeclarationMerge;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;

/**
 * What two commits began from. Where several commits are the last that both have, what these come to together; what they disagree about
 * is left out of it, so that it has to be decided again and is not decided by chance.
 */
final class History {

    private static final int DEEPEST = 20;

    /** What was accepted is later than what was taken before. */
    private static final Choice ACCEPTED = new Choice(Set.of(), Map.of("all", Side.THEIRS), false);

    private final Clone clone;
    private final Map<ObjectId, Content> known = new HashMap<>();

    History(Clone clone) {
        this.clone = clone;
    }

    /** What two commits began from; nothing at all where their histories have nothing in common. */
    Content base(ObjectId one, ObjectId other) {
        return base(one, other, 0);
    }

    private Content base(ObjectId one, ObjectId other, int depth) {
        List<ObjectId> last = lastInCommon(one, other);
        return last.isEmpty() || depth > DEEPEST ? Content.NOTHING : agreed(last, depth);
    }

    private Content agreed(List<? extends ObjectId> commits, int depth) {
        Content all = content(commits.get(0));
        for (ObjectId next : commits.subList(1, commits.size())) {
            all = Content.agreed(base(commits.get(0), next, depth + 1), all, content(next));
        }
        return all;
    }

    /**
     * What a site and the main line have in common when the main line has taken something of the site's: what the site took last, and of
     * its own proposals what was accepted as it was proposed.
     *
     * @param came  what the site took last, as far as it took it
     * @param taken its commit
     * @param own   the site's last proposal
     * @param main  tip of the main line
     */
    Content common(Content came, ObjectId taken, ObjectId own, ObjectId main) {
        Content common = came;
        for (ObjectId accepted : lastInCommon(own, main)) {
            for (ObjectId one : proposed(accepted, taken)) {
                Content before = parents(one);
                Content content = content(one);
                Set<String> otherwise = content.differences(content(firstWith(one, main)));
                Content part = new Content(
                        DeclarationMerge.part(before.texts(), content.texts(), name -> !otherwise.contains(name)),
                        content.items(),
                        content.currency());
                Content.Joined joined = Content.join(before, common, part, ACCEPTED);
                common = joined.reads() ? joined.content() : common;
            }
        }
        return common;
    }

    /** What a commit was made from. */
    private Content parents(ObjectId of) {
        try {
            RevCommit commit = clone.commit(of);
            return commit.getParentCount() == 0 ? Content.NOTHING : agreed(List.of(commit.getParents()), 0);
        } catch (IOException e) {
            throw Clone.damaged(e);
        }
    }

    /** What a site has proposed one after the other since it took something, the earliest first. */
    private List<ObjectId> proposed(ObjectId last, ObjectId taken) {
        try {
            List<ObjectId> all = new ArrayList<>();
            for (ObjectId at = last; !clone.isIn(at, taken); ) {
                all.add(0, at);
                RevCommit commit = clone.commit(at);
                if (commit.getParentCount() == 0) {
                    return all;
                }
                at = commit.getParent(0);
            }
            return all;
        } catch (IOException e) {
            throw Clone.damaged(e);
        }
    }

    /** The commit of the main line by which another one came into it. */
    private ObjectId firstWith(ObjectId commit, ObjectId main) {
        try {
            RevCommit first = clone.commit(main);
            while (first.getParentCount() > 0 && clone.isIn(commit, first.getParent(0))) {
                first = clone.commit(first.getParent(0));
            }
            return first;
        } catch (IOException e) {
            throw Clone.damaged(e);
        }
    }

    private List<ObjectId> lastInCommon(ObjectId one, ObjectId other) {
        if (one.equals(other)) {
            return List.of(one);
        }
        try (RevWalk walk = new RevWalk(clone.repository())) {
            walk.setRevFilter(RevFilter.MERGE_BASE);
            walk.markStart(walk.parseCommit(one));
            walk.markStart(walk.parseCommit(other));
            List<ObjectId> last = new ArrayList<>();
            for (RevCommit commit : walk) {
                last.add(commit.getId());
            }
            return last;
        } catch (IOException e) {
            throw Clone.damaged(e);
        }
    }

    /** What a commit holds; one that is no sound pack, as somebody may have put there by hand, has nothing to begin from. */
    Content content(ObjectId commit) {
        return known.computeIfAbsent(commit.copy(), id -> {
            try {
                return Content.of(clone.pack(id, id.abbreviate(8).name()));
            } catch (PackRefused e) {
                return Content.NOTHING;
            }
        });
    }
}
