package baywright.swing.api;

/** Closing it ends what it stands for. */
@FunctionalInterface
public interface Subscription extends AutoCloseable {
    @Override
    void close();
}
