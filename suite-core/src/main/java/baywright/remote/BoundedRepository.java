package baywright.remote;

import java.io.File;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.eclipse.jgit.internal.storage.file.FileRepository;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.transport.PackParser;

/** A repository that takes in only as much at a time as a shared library can need. */
final class BoundedRepository extends FileRepository {

    /** Largest object, bytes: the largest manifest, and more than the largest file of a pack. */
    static final long LARGEST_OBJECT = 8L << 20;

    /** Most that comes in one fetch, bytes as they are sent. */
    static final long LARGEST_FETCH = 256L << 20;

    /** Most objects in one fetch. */
    static final int MOST_OBJECTS = 1_000_000;

    BoundedRepository(File folder) throws IOException {
        super(folder);
    }

    /** More came than there may be. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        TooLarge(String message) {
            super(message);
        }
    }

    @Override
    public ObjectInserter newObjectInserter() {
        ObjectInserter plain = super.newObjectInserter();
        return new ObjectInserter.Filter() {
            @Override
            protected ObjectInserter delegate() {
                return plain;
            }

            @Override
            public PackParser newPackParser(InputStream in) throws IOException {
                PackParser parser = plain.newPackParser(new Bounded(in));
                parser.setMaxObjectSizeLimit(LARGEST_OBJECT);
                return parser;
            }
        };
    }

    /** Counts what comes, and looks at how many objects the head of a pack promises before room is made for them. */
    private static final class Bounded extends FilterInputStream {

        private static final int HEAD = 12;
        private static final int COUNT_AT = 8;

        private long seen;
        private long count;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int next = super.read();
            if (next >= 0) {
                look(seen, next);
                add(1);
            }
            return next;
        }

        @Override
        public int read(byte[] into, int at, int most) throws IOException {
            int got = super.read(into, at, most);
            for (int i = 0; i < got && seen + i < HEAD; i++) {
                look(seen + i, into[at + i] & 0xFF);
            }
            add(Math.max(got, 0));
            return got;
        }

        @Override
        public long skip(long most) throws IOException {
            long gone = super.skip(most);
            add(gone);
            return gone;
        }

        private void look(long place, int next) throws IOException {
            if (place >= COUNT_AT && place < HEAD) {
                count = count << 8 | next;
            }
            if (place == HEAD - 1 && count > MOST_OBJECTS) {
                throw new TooLarge(count + " objects");
            }
        }

        private void add(long bytes) throws IOException {
            seen += bytes;
            if (seen > LARGEST_FETCH) {
                throw new TooLarge("more than " + (LARGEST_FETCH >> 20) + " MiB");
            }
        }
    }
}
