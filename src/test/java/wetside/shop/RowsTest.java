package wetside.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;

class RowsTest {
    private final Jdbi jdbi = Jdbi.create("jdbc:sqlite::memory:");

    record Row(long id, String aName, Long corrects, Double waterConductivity, Instant movedAt, JobState state) {}

    record Wrong(StringBuilder words) {}

    private <T extends Record> T read(Class<T> record, String select) {
        return jdbi.withHandle(h -> h.createQuery(select).map(Rows.of(record)).one());
    }

    @Test
    void eachComponentComesFromTheColumnOfItsName() {
        Row row = read(
                Row.class,
                "SELECT 'ON_BENCH' AS state, '2026-03-01T10:00:00.5Z' AS moved_at, 0.042 AS water_conductivity,"
                        + " 7 AS corrects, 'x' AS a_name, 3 AS id, 'more' AS more");
        assertThat(row)
                .isEqualTo(new Row(3, "x", 7L, 0.042, Instant.parse("2026-03-01T10:00:00.5Z"), JobState.ON_BENCH));
    }

    @Test
    void nothingStaysNothingAndIsNotNought() {
        Row row = read(
                Row.class,
                "SELECT 1 AS id, NULL AS a_name, NULL AS corrects, NULL AS water_conductivity,"
                        + " '2026-03-01T10:00:00Z' AS moved_at, 'DONE' AS state");
        assertThat(row.aName()).isNull();
        assertThat(row.corrects()).isNull();
        assertThat(row.waterConductivity()).isNull();
    }

    @Test
    void aColumnThatIsMissingOrOfNoKnownSortIsTold() {
        assertThatThrownBy(() -> read(Row.class, "SELECT 1 AS id")).rootCause().hasMessageContaining("a_name");
        assertThatThrownBy(() -> Rows.of(Wrong.class)).hasMessageContaining("StringBuilder");
    }
}
