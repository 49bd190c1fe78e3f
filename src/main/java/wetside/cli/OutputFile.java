package wetside.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file the user wants written: there whole, or as it was before. */
final class OutputFile {
    private final String option;
    private final Path path;

    private OutputFile(String option, Path path) {
        this.option = option;
        this.path = path;
    }

    /** Refuses at once what cannot be written, before anything long is computed. */
    static OutputFile of(String option, String name) {
        try {
            Path path = Path.of(name);
            path = Files.isRegularFile(path) ? path.toRealPath() : path.toAbsolutePath();
            OutputFile file = new OutputFile(option, path);
            file.check(name);
            return file;
        } catch (InvalidPathException e) {
            throw new BadArgument(option + ": '" + name + "' is no name of a file");
        } catch (IOException e) {
            throw new BadArgument(option + " " + name + " cannot be written: " + reason(e));
        }
    }

    private void check(String name) {
        Path folder = path.getParent();
        if (Files.isDirectory(path)) {
            throw new BadArgument(option + " " + name + " is a folder; name a file in it");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadArgument(option + " " + name + " cannot be written: there is no folder " + folder);
        }
        if (!Files.isWritable(isDevice() ? path : folder)) {
            throw new BadArgument(
                    option + " " + name + " cannot be written: no permission in " + (isDevice() ? path : folder));
        }
    }

    /** Something that only takes text and cannot be moved over, such as a pipe. */
    private boolean isDevice() {
        return Files.exists(path) && !Files.isRegularFile(path);
    }

    Path path() {
        return path;
    }

    /** As UTF-8. */
    void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Written beside its place and moved there whole. */
    void write(byte[] content) {
        try {
            if (isDevice()) {
                Files.write(path, content, StandardOpenOption.WRITE);
                return;
            }
            Path part = path.resolveSibling(
                    "." + path.getFileName() + "." + ProcessHandle.current().pid() + ".part");
            try {
                Files.write(part, content);
                Files.move(part, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new BadArgument(option + " " + path + " could not be written: " + reason(e));
        }
    }

    /** What an exception of the file system says, where its message is no more than a name. */
    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission for " + e.getMessage();
        }
        return e instanceof FileSystemException file && file.getReason() == null
                ? file.getFile() + " is in the way or missing"
                : e.getMessage();
    }
}
