package baywright.remote;

import baywright.pack.PackJson;
import baywright.share.Texts;
import baywright.workspace.Fields;
import baywright.workspace.JsonText;
import baywright.workspace.WorkspaceException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;

/**
 * Which shared library a site follows, in {@code packs/shared.json}.
 *
 * @param remote address of the repository; no password is in it
 * @param branch its main line
 * @param site   id of the site, which is the name of the branch of its proposals
 */
public record Followed(String remote, String branch, String site) {

    /** The file, below the workspace. */
    public static final String FILE = "packs/shared.json";

    /** Branches of proposals begin with it. */
    static final String PROPOSALS = "proposals/";

    private static final String KIND = "shared-library";
    private static final int VERSION = 1;

    /** @throws RemoteFault when the address or the branch cannot be used */
    public Followed {
        RemoteAddress.of(remote);
        if (!isBranch(branch)) {
            throw new RemoteFault(remote, RemoteFault.Kind.ADDRESS_BRANCH, branch);
        }
        if (!Fields.isId(site)) {
            throw new IllegalArgumentException("a site needs an id, got '" + site + "'");
        }
    }

    private static boolean isBranch(String name) {
        return name.length() <= 100
                && Repository.isValidRefName(Constants.R_HEADS + name)
                && !(name + "/").startsWith(PROPOSALS)
                && name.chars().allMatch(c -> c > ' ' && c < 0x7f);
    }

    /**
     * What a workspace follows; empty: nothing.
     *
     * @throws WorkspaceException when the file cannot be used
     */
    public static Optional<Followed> of(Path workspace) {
        return new Texts(workspace).text(FILE).map(Followed::read);
    }

    private static Followed read(String text) {
        JsonText<Followed> read =
                JsonText.read(FILE, text.getBytes(StandardCharsets.UTF_8), KIND, VERSION, Followed::read);
        return read.value()
                .orElseThrow(
                        () -> new WorkspaceException(read.error().orElseThrow().toString()));
    }

    private static Optional<Followed> read(Fields in) {
        String remote = in.text("remote");
        String branch = in.text("branch");
        String site = in.id("site");
        if (!remote.isEmpty() && !RemoteAddress.isOne(remote)) {
            in.refuse(
                    "remote",
                    "this is no address without a password",
                    "give a folder, file://, ssh://, user@host:path or https://");
        }
        if (!branch.isEmpty() && !isBranch(branch)) {
            in.refuse("branch", "this cannot be the name of a main line", "give one such as \"main\"");
        }
        in.done();
        return in.whenSound(() -> new Followed(remote, branch, site));
    }

    String text() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schema", "baywright/" + KIND + "/" + VERSION);
        json.put("remote", remote);
        json.put("branch", branch);
        json.put("site", site);
        return PackJson.text(json);
    }
}
