package baywright.workspace;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** Says in plain words what a disk would not do. */
final class DiskFault {

    private DiskFault() {}

    static String reason(Exception e) {
        if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException) {
            return "the folder is read-only for this user";
        }
        if (e instanceof NoSuchFileException || e instanceof NotDirectoryException) {
            return "the folder is gone";
        }
        String detail = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        if (detail == null) {
            return "the disk gave no reason";
        }
        String lower = detail.toLowerCase(Locale.ROOT);
        if (lower.contains("no space") || lower.contains("not enough space") || lower.contains("quota")) {
            return "the disk is full";
        }
        if (lower.contains("read-only")) {
            return "the folder is read-only for this user";
        }
        return Shown.plain(detail);
    }

    static WorkspaceException notWritten(String file, IOException e) {
        return new WorkspaceException(
                file + ": not saved, " + reason(e) + "; the file is as it was before. " + mend(reason(e)), e);
    }

    private static String mend(String reason) {
        return switch (reason) {
            case "the disk is full" -> "Free some space and save again";
            case "the folder is gone" -> "Put the folder back or copy the workspace to another place";
            case "the folder is read-only for this user" -> "Change its permissions or copy the workspace";
            default -> "Check the disk and save again";
        };
    }
}
