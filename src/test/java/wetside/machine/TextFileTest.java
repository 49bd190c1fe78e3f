package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
    @TempDir
    Path folder;

    @Test
    void aFileOfFiftyMegabytesIsRefusedUnread() throws IOException {
        Path file = folder.resolve("big.yaml");
        try (RandomAccessFile big = new RandomAccessFile(file.toFile(), "rw")) {
            big.setLength(50_000_000);
        }
        assertThatThrownBy(() -> MachineFile.read(file, SmallKinds.ALL))
                .isInstanceOf(BadFile.class)
                .hasMessage(file + ": the file has 50 MB; the largest taken is 1 MB.");
    }

    @Test
    void aMissingFileNamesItsNeighbour() throws IOException {
        Files.writeString(folder.resolve("kettle.yaml"), "x");
        Path file = folder.resolve("ketle.yaml");
        assertThatThrownBy(() -> TextFile.read(file))
                .hasMessage(file + ": there is no such file. Maybe " + folder.resolve("kettle.yaml") + ".");
        assertThatThrownBy(() -> TextFile.read(folder)).hasMessage(folder + ": this is a folder; a file is wanted.");
    }

    @Test
    void whatIsNoTextIsRefused() throws IOException {
        Path picture = Files.write(folder.resolve("p.yaml"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1});
        Path latin = Files.write(folder.resolve("l.yaml"), "± 3".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> TextFile.read(picture)).hasMessage(picture + ": this is not a text file in UTF-8.");
        assertThatThrownBy(() -> TextFile.read(latin)).hasMessage(latin + ": this is not a text file in UTF-8.");
    }

    @Test
    void aByteOrderMarkIsSkipped() throws IOException {
        Path file = Files.writeString(folder.resolve("b.yaml"), "\uFEFFa: 1");
        assertThat(Node.read(file).text("a")).isEqualTo("1");
    }
}
