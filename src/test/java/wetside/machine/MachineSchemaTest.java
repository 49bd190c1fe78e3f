package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MachineSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final Schema schema = REGISTRY.getSchema(MachineSchema.json(SmallKinds.ALL));

    @Test
    void itIsASchemaItself() {
        Schema meta = REGISTRY.getSchema(
                com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(MachineSchema.json(SmallKinds.ALL), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void whatTheReaderTakesPasses() {
        assertThat(messages(MachineFileTest.kettle())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wetside machine: 1         | wetside machine: 2",
                "title:                     | titel:",
                "kind: safety valve         | kind: safty valve",
                "opening pressure           | opening presure",
                "12 bar                     | 12 baar",
                "12 bar                     | 12",
                "12 bar                     | 12 °C",
                "12 bar                     | 12 bar ± 3 mm",
                "93 °C ± 2 K                | 93 °C ± 2 %",
                "set: {bore: 7 mm}          | set: {bor: 7 mm}",
                "bore: 6 mm, length: 0.4 m, | bore: 6 mm,",
                "mains.out > cock.in        | mains.out cock.in",
                "2021-06                    | June 2021",
                "[40 mm, 10 mm, 6 cm]       | [40 mm, 10 mm]",
                "12 W/K                     | 12 W",
                "minutes: 4                 | minutes: long",
            })
    void whatTheReaderRefusesIsMarked(String right, String wrong) {
        assertThat(MachineFileTest.kettle()).contains(right);
        assertThat(messages(MachineFileTest.kettle().replace(right, wrong))).isNotEmpty();
    }

    private List<String> messages(String yaml) {
        return schema.validate(yaml, InputFormat.YAML).stream()
                .map(Object::toString)
                .toList();
    }
}
