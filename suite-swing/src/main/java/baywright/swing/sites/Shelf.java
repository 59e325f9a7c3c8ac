package baywright.swing.sites;

import baywright.pack.SignerKey;
import baywright.pack.TrustList;
import baywright.share.PackLock;
import baywright.share.Taking;
import baywright.share.TakingBack;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a shop has of packs and keys, as it was read from its files.
 *
 * @param lock    packs that were taken
 * @param own     names of what the site has changed of each, by its id
 * @param undo    whether the last one can be taken back
 * @param trusted whose packs are taken
 * @param keys    public halves of the user's keys by their names
 */
record Shelf(
        PackLock lock,
        Map<String, List<String>> own,
        boolean undo,
        List<TrustList.Trusted> trusted,
        Map<String, SignerKey> keys) {

    static final Shelf EMPTY = new Shelf(PackLock.NONE, Map.of(), false, List.of(), Map.of());

    /** Reads it. Off the event thread. */
    static Shelf read(Path workspace, Around around) {
        PackLock lock = Taking.lockOf(workspace);
        Map<String, List<String>> own = new LinkedHashMap<>();
        lock.packs().forEach(pack -> own.put(pack.id(), Taking.changedHere(workspace, pack.id())));
        Map<String, SignerKey> keys = new LinkedHashMap<>();
        around.keys()
                .sites()
                .forEach(site -> keys.put(site, around.keys().read(site).signer()));
        return new Shelf(
                lock,
                own,
                TakingBack.isPossible(workspace),
                TrustList.of(workspace).all(),
                keys);
    }
}
