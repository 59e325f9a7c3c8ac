package baywright.remote;

import java.util.Map;
import java.util.Optional;

/** What a remote asks before it lets somebody in, and who answers. Called from the thread that works; answers are kept nowhere. */
@FunctionalInterface
public interface Access {

    /** The variable that has the user's name for https. */
    String USER = "BAYWRIGHT_REMOTE_USER";

    /** The variable that has the password or token for https. */
    String PASSWORD = "BAYWRIGHT_REMOTE_PASSWORD";

    /** Answers nothing: keys without a passphrase and known hosts alone will do. */
    Access NOBODY = question -> Optional.empty();

    /**
     * A question.
     *
     * @param text what the remote, or what stands between, says about it; one or more lines
     */
    record Question(Kind kind, String text) {

        /** What is asked for. */
        public enum Kind {
            USER,
            PASSWORD,
            /** Of a key on this machine. */
            PASSPHRASE,
            /** Whether a host that was never met is the right one; {@code yes} or anything else. */
            HOST_KEY
        }

        /** Whether the answer must not show on a screen. */
        public boolean isSecret() {
            return kind == Kind.PASSWORD || kind == Kind.PASSPHRASE;
        }
    }

    /** The answer; empty: there is none. */
    Optional<String> answer(Question question);

    /** Answers from the environment what stands there, and leaves the rest to somebody else. */
    static Access of(Map<String, String> environment, Access otherwise) {
        return question -> switch (question.kind()) {
            case USER -> Optional.ofNullable(environment.get(USER)).or(() -> otherwise.answer(question));
            case PASSWORD -> Optional.ofNullable(environment.get(PASSWORD)).or(() -> otherwise.answer(question));
            case PASSPHRASE, HOST_KEY -> otherwise.answer(question);
        };
    }
}
