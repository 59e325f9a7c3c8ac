package baywright.workspace;

/**
 * A job that was taken out of a workspace and can be put back.
 *
 * @param folder name of the folder that it had below {@code jobs}
 * @param kept   name of the folder that it has below {@code jobs/.removed}
 */
public record RemovedJob(String folder, String kept) {}
