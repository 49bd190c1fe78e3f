package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.kind.Kinds;

class BundledMachinesTest {
    @ParameterizedTest
    @MethodSource("wetside.machine.MachineFile#names")
    void isFoundRightByTheReader(String name) {
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        assertThat(file.newest().identity().id()).isEqualTo(name);
        assertThat(file.size()).isPresent();
        assertThat(file.newest().components()).hasSizeGreaterThan(20);
        assertThat(MachineFile.find("machines/" + name + ".yaml", Kinds.declarations())
                        .source())
                .isEqualTo(file.source());
    }

    @ParameterizedTest
    @MethodSource("wetside.machine.MachineFile#names")
    void passesTheSchema(String name) {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(MachineSchema.json(Kinds.declarations()));
        assertThat(schema.validate(TextFile.read(Path.of("machines", name + ".yaml")), InputFormat.YAML))
                .isEmpty();
    }

    @Test
    void aMachineThatDoesNotComeWithWetsideIsSaidSo() {
        assertThat(MachineFile.names()).contains("twin-boiler-lever");
        assertThatThrownBy(() -> MachineFile.find("twin-boiler-levr", Kinds.declarations()))
                .isInstanceOf(BadFile.class)
                .hasMessageStartingWith("twin-boiler-levr: no machine of this name comes with Wetside; there")
                .hasMessageEndingWith("Maybe \"twin-boiler-lever\".");
    }
}
