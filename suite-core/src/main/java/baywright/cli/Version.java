package baywright.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version as its build wrote it down. */
final class Version implements IVersionProvider {

    /** The version, or {@code in development} when the classes were not packed. */
    static String text() {
        String packed = Version.class.getPackage().getImplementationVersion();
        return packed == null ? "in development" : packed;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Baywright " + text()};
    }
}
