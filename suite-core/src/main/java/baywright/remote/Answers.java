package baywright.remote;

import java.util.Optional;
import org.eclipse.jgit.transport.CredentialItem;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.URIish;

/** What JGit asks for, put to an {@link Access}. */
final class Answers extends CredentialsProvider {

    private final Access access;

    Answers(Access access) {
        this.access = access;
    }

    @Override
    public boolean isInteractive() {
        return true;
    }

    @Override
    public boolean supports(CredentialItem... items) {
        return true;
    }

    @Override
    public boolean get(URIish uri, CredentialItem... items) {
        StringBuilder told = new StringBuilder();
        for (CredentialItem item : items) {
            if (item instanceof CredentialItem.InformationalMessage) {
                told.append(item.getPromptText()).append('\n');
            } else if (!answer(uri, item, told + String.valueOf(item.getPromptText()))) {
                return false;
            }
        }
        return true;
    }

    private boolean answer(URIish uri, CredentialItem item, String text) {
        if (item instanceof CredentialItem.YesNoType yesNo) {
            Optional<String> said = ask(Access.Question.Kind.HOST_KEY, text);
            yesNo.setValue(said.filter("yes"::equals).isPresent());
            return said.isPresent();
        }
        if (item instanceof CredentialItem.Username user) {
            Optional<String> said = Optional.ofNullable(uri.getUser())
                    .or(() -> ask(Access.Question.Kind.USER, uri.setPass(null).toString()));
            said.ifPresent(user::setValue);
            return said.isPresent();
        }
        boolean ofKey = !(item instanceof CredentialItem.Password) || "ssh".equals(uri.getScheme());
        Optional<String> said = ask(
                ofKey ? Access.Question.Kind.PASSPHRASE : Access.Question.Kind.PASSWORD,
                ofKey ? text : uri.setPass(null).toString());
        if (item instanceof CredentialItem.CharArrayType secret) {
            said.ifPresent(value -> secret.setValue(value.toCharArray()));
            return said.isPresent();
        }
        if (item instanceof CredentialItem.StringType secret) {
            said.ifPresent(secret::setValue);
            return said.isPresent();
        }
        return false;
    }

    private Optional<String> ask(Access.Question.Kind kind, String text) {
        return access.answer(new Access.Question(kind, text));
    }
}
