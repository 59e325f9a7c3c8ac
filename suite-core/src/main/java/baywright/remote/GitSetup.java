package baywright.remote;

import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.ConfigConstants;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * Keeps JGit to what this program asks of it: it reads and writes no settings of the user's git, and no variable of the environment makes it
 * run a program, as {@code GIT_SSH} would.
 */
final class GitSetup extends SystemReader.Delegate {

    private static final String OF_GIT = "GIT_";

    /** FAT keeps the time of a change to two seconds (Microsoft, "File Times"). */
    private static final long COARSEST_SECONDS = 2;

    static {
        SystemReader.setInstance(new GitSetup(SystemReader.getInstance()));
    }

    private GitSetup(SystemReader usual) {
        super(usual);
    }

    /** Takes effect for the whole program, once. */
    static void settle() {
        // the class is set up by being used
    }

    @Override
    public String getenv(String variable) {
        return variable.startsWith(OF_GIT) ? null : super.getenv(variable);
    }

    @Override
    public FileBasedConfig openUserConfig(Config parent, FS fs) {
        return new Nothing(parent, fs);
    }

    @Override
    public FileBasedConfig openSystemConfig(Config parent, FS fs) {
        return new Nothing(parent, fs);
    }

    @Override
    public FileBasedConfig openJGitConfig(Config parent, FS fs) {
        return new Nothing(parent, fs);
    }

    /** Settings that stand in no file. */
    private static final class Nothing extends FileBasedConfig {

        Nothing(Config parent, FS fs) {
            super(parent, null, fs);
        }

        @Override
        public void load() {
            // there is no file
        }

        @Override
        public void save() {
            // what JGit measures of a disk is good for this run
        }

        /** How coarse the times of files are: taken as of the coarsest disk, rather than seconds spent on measuring it. */
        @Override
        public long getTimeUnit(String section, String subsection, String name, long usual, TimeUnit unit) {
            return section.equals(ConfigConstants.CONFIG_FILESYSTEM_SECTION)
                    ? unit.convert(COARSEST_SECONDS, TimeUnit.SECONDS)
                    : super.getTimeUnit(section, subsection, name, usual, unit);
        }

        @Override
        public boolean isOutdated() {
            return false;
        }
    }
}
