package wetside.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The one-way use of packages and the few habits that reviews would otherwise have to watch for. */
class ArchitectureTest {
    private static final JavaClasses WETSIDE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("wetside");
    private static final Path SOURCES = Path.of("src/main/java");

    @ParameterizedTest
    @EnumSource
    void aPackageUsesOnlyWhatLiesBelowIt(Room room) {
        if (room.forbidden().length == 0) {
            return;
        }
        noClasses()
                .that()
                .resideInAPackage(room.packages())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(room.forbidden())
                .because(room.reason)
                .allowEmptyShould(true)
                .check(WETSIDE);
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() throws IOException {
        List<String> rooms = Stream.of(Room.values()).map(Room::folder).toList();
        try (Stream<Path> folders = Files.list(SOURCES.resolve("wetside"))) {
            assertThat(folders.filter(Files::isDirectory)
                            .map(folder -> folder.getFileName().toString()))
                    .as("a new package needs a line in Room: what it may use, and why no more")
                    .isSubsetOf(rooms);
        }
    }

    @Test
    void packagesAreFreeOfCycles() {
        check(slices().matching("wetside.(*)..")
                .should()
                .beFreeOfCycles()
                .because("two packages that use each other can only be understood, tested and changed as one"));
    }

    @Test
    void theCoreNeedsNoLibrary() {
        check(classes()
                .that()
                .resideInAnyPackage(
                        "wetside.units..",
                        "wetside.physics..",
                        "wetside.blueprint..",
                        "wetside.plant..",
                        "wetside.diagnosis..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("wetside..", "java..")
                .because("laws, solver and inference outlive any library and run where nothing else is installed"));
    }

    @Test
    void yamlIsReadInTwoPlaces() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages("wetside.machine..", "wetside.procedure..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.snakeyaml..")
                .because("one reader gives every file the same messages, limits and line numbers"));
    }

    @Test
    void picocliStaysAtTheCommandLine() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("wetside.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .because("the web and the tests call the same code without a command line"));
    }

    @Test
    void onlyTheCommandLinePrints() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("wetside.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .because("a stray line breaks --json, and a message belongs where its reader is known"));
    }

    @Test
    void onlyTheShopKnowsOfADatabase() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("wetside.shop..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "com.zaxxer..", "org.flywaydb..")
                .because("SQL stays in the shop, so that what is kept can change without any page"));
    }

    @Test
    void aClassIsNamedAfterAThing() {
        check(noClasses()
                .should()
                .haveNameMatching(".*(Manager|Util|Utils|Helper|Helpers|Service)(\\$.*)?")
                .because("such a name says nothing of what is inside, so everything ends up inside"));
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        assertThat(packagesWithoutIntroduction(SOURCES))
                .as("packages whose package-info.java is missing or has no sentence of at least six words")
                .isEmpty();
    }

    @Test
    void theRulesNoticeABreach() {
        JavaClasses offenders = new ClassFileImporter().importClasses(LoudHelper.class);
        assertThatThrownBy(() ->
                        noClasses().should().accessField(System.class, "out").check(offenders))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> noClasses()
                        .should()
                        .haveNameMatching(".*Helper(\\$.*)?")
                        .check(offenders))
                .isInstanceOf(AssertionError.class);
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(WETSIDE);
    }

    private static List<String> packagesWithoutIntroduction(Path sources) throws IOException {
        List<String> without = new ArrayList<>();
        try (Stream<Path> files = Files.walk(sources)) {
            List<Path> folders = files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .toList();
            for (Path folder : folders) {
                Path info = folder.resolve("package-info.java");
                if (!Files.exists(info) || !hasSentence(Files.readString(info))) {
                    without.add(sources.relativize(folder).toString());
                }
            }
        }
        return without;
    }

    private static boolean hasSentence(String source) {
        Matcher comment = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL).matcher(source);
        if (!comment.find()) {
            return false;
        }
        String text = comment.group(1).replaceAll("(?m)^\\s*\\*", " ").strip();
        String sentence = text.split("(?<=\\.)\\s", 2)[0];
        return sentence.endsWith(".") && sentence.split("\\s+").length >= 6;
    }

    /** What the rules forbid, so that a rule which finds nothing any more is noticed. */
    private static final class LoudHelper {
        @SuppressWarnings("unused")
        static void shout() {
            System.out.println("here");
        }
    }
}
