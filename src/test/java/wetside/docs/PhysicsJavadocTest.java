package wetside.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** A law of physics says where it comes from and which test holds it against that. */
class PhysicsJavadocTest {
    private static final Path LAWS = Path.of("src/main/java/wetside/physics");
    private static final Pattern CHECKED = Pattern.compile("Checked:(.*)", Pattern.DOTALL);
    private static final Pattern TEST_NAME = Pattern.compile("\\b\\w+Test\\b");

    @Test
    void everyLawNamesItsSourceAndItsCheck() throws IOException {
        List<String> complaints = new ArrayList<>();
        try (Stream<Path> files = Files.isDirectory(LAWS) ? Files.walk(LAWS) : Stream.empty()) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .forEach(file ->
                            complaints.addAll(complaints(file.getFileName().toString(), Pages.read(file))));
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void aLawWithoutThemIsNoticed() {
        String source = """
                public final class Laws {
                    /** Good. Source: a book. Checked: PhysicsJavadocTest. */
                    public static double good() { return 1; }
                    /** No source. Checked: PhysicsJavadocTest. */
                    public static double sourceless() { return 1; }
                    /** Source: a book. Checked: NeverWrittenTest. */
                    public static double unchecked() { return 1; }
                    public static double bare() { return 1; }
                    static double inner() { return 1; }
                }
                """;
        assertThat(complaints("Laws.java", source))
                .containsExactly(
                        "Laws.java: sourceless has no Source:",
                        "Laws.java: unchecked: no test NeverWrittenTest",
                        "Laws.java: bare has no Source:",
                        "Laws.java: bare has no Checked: with the name of a test");
    }

    private static List<String> complaints(String name, String source) {
        List<String> complaints = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask) compiler.getTask(
                null, null, diagnostic -> {}, List.of("-proc:none"), null, List.of(new Source(name, source)));
        DocTrees comments = DocTrees.instance(task);
        try {
            for (CompilationUnitTree unit : task.parse()) {
                new PublicStatics(comments, name, complaints).scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return complaints;
    }

    private static final class PublicStatics extends TreePathScanner<Void, Void> {
        private final DocTrees comments;
        private final String file;
        private final List<String> complaints;

        PublicStatics(DocTrees comments, String file, List<String> complaints) {
            this.comments = comments;
            this.file = file;
            this.complaints = complaints;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            if (method.getModifiers().getFlags().containsAll(List.of(Modifier.PUBLIC, Modifier.STATIC)) && isSeen()) {
                String comment = comments.getDocComment(getCurrentPath());
                judge(method.getName().toString(), comment == null ? "" : comment);
            }
            return super.visitMethod(method, nothing);
        }

        /** A public method of a class nobody outside can see is no law of the package. */
        private boolean isSeen() {
            for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
                Tree tree = path.getLeaf();
                if (tree instanceof ClassTree type
                        && type.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
                    return false;
                }
            }
            return true;
        }

        private void judge(String method, String comment) {
            if (!comment.contains("Source:")) {
                complaints.add(file + ": " + method + " has no Source:");
            }
            Matcher checked = CHECKED.matcher(comment);
            Matcher test = TEST_NAME.matcher(checked.find() ? checked.group(1) : "");
            if (!test.find()) {
                complaints.add(file + ": " + method + " has no Checked: with the name of a test");
            } else if (!exists(test.group())) {
                complaints.add(file + ": " + method + ": no test " + test.group());
            }
        }

        private static boolean exists(String test) {
            try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
                return files.anyMatch(file -> file.getFileName().toString().equals(test + ".java"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(String name, String text) {
            super(URI.create("string:///" + name), JavaFileObject.Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
