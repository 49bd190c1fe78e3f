package wetside.shop;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Properties;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;

/**
 * A workshop's data, open in one process. Whatever {@link #change} has returned from survives a crash of program or machine:
 * the log is forced to the disk with every transaction.
 */
public final class Shop implements AutoCloseable {
    /** The file in the shop's folder. */
    public static final String FILE = "wetside.db";

    /** The newest of the migrations in the resources. */
    static final int NEWEST = 4;

    private final Path folder;
    private final HikariDataSource source;
    private final Jdbi jdbi;
    private final FileChannel lockFile;
    /** Whoever asks several things together. */
    private final ThreadLocal<Handle> asking = new ThreadLocal<>();

    private Shop(Path folder, HikariDataSource source, FileChannel lockFile, Jdbi jdbi) {
        this.folder = folder;
        this.source = source;
        this.lockFile = lockFile;
        this.jdbi = jdbi;
        // Times are kept as text; the driver would take them for dates of its own form.
        jdbi.registerColumnMapper(Instant.class, (r, column, context) -> Instant.parse(r.getString(column)));
    }

    /** Opens the shop in a folder, making it where there is none. */
    public static Shop open(Path folder) {
        FileChannel lock = null;
        HikariDataSource source = null;
        try {
            Files.createDirectories(folder);
            lock = lock(folder);
            source = new HikariDataSource(config(folder.resolve(FILE)));
            migrate(source, folder);
            return new Shop(folder, source, lock, Jdbi.create(source));
        } catch (IOException e) {
            close(source, lock);
            throw new ShopTrouble("the folder " + folder + " cannot be used: " + e.getMessage(), e);
        } catch (ShopTrouble e) {
            close(source, lock);
            throw e;
        } catch (RuntimeException e) {
            close(source, lock);
            throw ShopTrouble.of(folder.resolve(FILE), e);
        }
    }

    /**
     * A shop somebody else may have open: only to be read, nothing in its folder is made or changed.
     *
     * @param folderOrFile the shop's folder, or its file under whatever name
     */
    public static Shop reading(Path folderOrFile) {
        Path file = Files.isDirectory(folderOrFile) ? folderOrFile.resolve(FILE) : folderOrFile;
        if (!Files.isRegularFile(file)) {
            throw new ShopTrouble("there is no workshop in " + folderOrFile + ": no file " + file, null);
        }
        Shop shop = new Shop(file.toAbsolutePath());
        int version = shop.version();
        if (version > NEWEST) {
            throw new ShopTrouble(
                    file + " was written by a newer Wetside (its version " + version + "); use that version", null);
        }
        return shop;
    }

    private Shop(Path file) {
        this(file.getParent(), null, null, Jdbi.create(address(file), readOnly()));
    }

    /** A file nobody has open is taken as one that cannot change: else even a reader makes its log beside it. */
    private static String address(Path file) {
        boolean open = Files.exists(file.resolveSibling(file.getFileName() + "-wal"));
        return "jdbc:sqlite:" + (open ? file : file.toUri() + "?immutable=1");
    }

    private static Properties readOnly() {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(5000);
        return config.toProperties();
    }

    private int version() {
        return read(
                h -> h.createQuery("SELECT MAX(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success = 1")
                        .mapTo(Integer.class)
                        .one());
    }

    /** One process has a folder; a second would find its jobs changing under its hands. */
    private static FileChannel lock(Path folder) throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve("wetside.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return channel;
            }
        } catch (OverlappingFileLockException e) {
            // told below
        }
        channel.close();
        throw new ShopTrouble(
                "another Wetside has " + folder + " open; close that one, or name another folder with --data", null);
    }

    private static HikariConfig config(Path file) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file);
        config.setMaximumPoolSize(8);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(10_000);
        config.setInitializationFailTimeout(1);
        config.addDataSourceProperty("journal_mode", "WAL");
        // FULL: a commit is on the disk before it is told; NORMAL could lose the last ones when the power goes.
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("busy_timeout", "5000");
        config.addDataSourceProperty("foreign_keys", "true");
        // Taken at once: what reads and then writes must not find that another wrote in between.
        config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        return config;
    }

    private static void migrate(HikariDataSource source, Path folder) {
        Flyway flyway = Flyway.configure()
                .dataSource(source)
                .locations("classpath:wetside/shop")
                .ignoreMigrationPatterns(new String[0])
                .load();
        try {
            flyway.migrate();
        } catch (FlywayException e) {
            String newest = flyway.info().applied().length == 0
                    ? ""
                    : flyway.info().current().getVersion().toString();
            throw ShopTrouble.migration(folder.resolve(FILE), newest, e);
        }
    }

    private static void close(HikariDataSource source, FileChannel lock) {
        if (source != null) {
            source.close();
        }
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (IOException e) {
            // nothing is lost with it
        }
    }

    public Path folder() {
        return folder;
    }

    /** All questions asked meanwhile by this thread over one connection. */
    public <T> T together(Supplier<T> questions) {
        if (asking.get() != null) {
            return questions.get();
        }
        try {
            return jdbi.withHandle(h -> {
                asking.set(h);
                try {
                    return questions.get();
                } finally {
                    asking.remove();
                }
            });
        } catch (JdbiException e) {
            throw ShopTrouble.of(folder.resolve(FILE), e);
        }
    }

    /** Asks. */
    public <T> T read(Function<Handle, T> question) {
        Handle here = asking.get();
        try {
            return here == null ? jdbi.withHandle(question::apply) : question.apply(here);
        } catch (JdbiException e) {
            throw ShopTrouble.of(folder.resolve(FILE), e);
        }
    }

    /** Changes as one: all of it is there afterwards, or, when it throws, nothing. */
    public <T> T change(Function<Handle, T> doing) {
        try {
            return jdbi.inTransaction(doing::apply);
        } catch (JdbiException e) {
            throw ShopTrouble.of(folder.resolve(FILE), e);
        }
    }

    @Override
    public void close() {
        close(source, lockFile);
    }
}
