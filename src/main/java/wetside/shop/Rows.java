package wetside.shop;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;

/**
 * Rows as records: each component from the column of its name, {@code onHand} from {@code on_hand}. How is found out once
 * for a record, not for every question, which took a third of the time of a page.
 */
final class Rows<T> implements RowMapper<T> {
    private static final Map<Class<?>, Rows<?>> KNOWN = new ConcurrentHashMap<>();

    private final Constructor<T> constructor;
    private final String[] columns;
    private final Reader[] readers;

    /** Takes a value out of a column. */
    private interface Reader {
        Object of(ResultSet row, String column) throws SQLException;
    }

    private Rows(Class<T> record) {
        RecordComponent[] parts = record.getRecordComponents();
        Class<?>[] types = new Class<?>[parts.length];
        columns = new String[parts.length];
        readers = new Reader[parts.length];
        for (int i = 0; i < parts.length; i++) {
            types[i] = parts[i].getType();
            columns[i] = parts[i].getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
            readers[i] = reader(types[i]);
        }
        try {
            constructor = record.getDeclaredConstructor(types);
            constructor.setAccessible(true);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    @SuppressWarnings("unchecked")
    static <T extends Record> Rows<T> of(Class<T> record) {
        return (Rows<T>) KNOWN.computeIfAbsent(record, r -> new Rows<>((Class<T>) r));
    }

    private static Reader reader(Class<?> type) {
        if (type == String.class) {
            return ResultSet::getString;
        } else if (type == long.class) {
            return ResultSet::getLong;
        } else if (type == Long.class) {
            return (row, column) -> row.getObject(column) == null ? null : row.getLong(column);
        } else if (type == Double.class) {
            return (row, column) -> row.getObject(column) == null ? null : row.getDouble(column);
        } else if (type == Instant.class) {
            // kept as text; the driver would take it for a date of its own form
            return (row, column) -> Instant.parse(row.getString(column));
        } else if (type == JobState.class) {
            return (row, column) -> JobState.valueOf(row.getString(column));
        }
        throw new IllegalArgumentException("no column is read as " + type);
    }

    @Override
    public T map(ResultSet row, StatementContext context) throws SQLException {
        Object[] values = new Object[columns.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = readers[i].of(row, columns[i]);
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a row does not make a " + constructor.getDeclaringClass(), e);
        }
    }
}
