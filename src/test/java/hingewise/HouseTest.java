package hingewise;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where things live and who may use whom. No exceptions are made here; what does not fit moves. */
class HouseTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("hingewise");
    private static final String[] EDGES = {"hingewise", "hingewise.terminal..", "hingewise.wizard.."};

    @ParameterizedTest
    @EnumSource(Room.class)
    void aRoomUsesOnlyTheRoomsBelowIt(Room room) {
        classes()
                .that(describe("live in " + room, (JavaClass c) -> Room.of(c).equals(room)))
                .should()
                .onlyDependOnClassesThat(describe(
                        "live in " + room + " or in " + room.mayUse() + ", or are not ours",
                        c -> isForeign(c)
                                || Room.of(c).equals(room)
                                || room.mayUse().contains(Room.of(c))))
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void noPackageUsesItselfThroughOthers() {
        SlicesRuleDefinition.slices()
                .matching("hingewise.(**)")
                .should()
                .beFreeOfCycles()
                .check(HOUSE);
    }

    @Test
    void controlsLiveOnlyInTheWizard() {
        noClasses()
                .that()
                .resideOutsideOfPackages("hingewise.wizard..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "atlantafx..")
                .check(HOUSE);
    }

    @Test
    void theWizardsModelSeesNoControl() {
        noClasses()
                .that()
                .resideInAPackage("hingewise.wizard.model..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..", "atlantafx..")
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void fileFormatsAreReadAndWrittenOnlyWhereTheyEnterAndLeave() {
        noClasses()
                .that()
                .resideOutsideOfPackages("..yaml..", "..store..", "..csv..", "hingewise.terminal..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml.jackson..", "org.yaml..")
                .check(HOUSE);
    }

    @Test
    void onlyTheTerminalPrints() {
        noClasses()
                .that()
                .resideOutsideOfPackages("hingewise.terminal..")
                .should()
                .accessTargetWhere(access(
                        "prints",
                        a -> a.getTargetOwner().isEquivalentTo(System.class)
                                        && Set.of("out", "err").contains(a.getName())
                                || a.getName().equals("printStackTrace")))
                .check(HOUSE);
    }

    @Test
    void timeIsPassedIn() {
        Set<String> readings =
                Set.of("currentTimeMillis", "nanoTime", "now", "systemUTC", "systemDefaultZone", "system");
        noClasses()
                .that()
                .resideOutsideOfPackages(EDGES)
                .should()
                .accessTargetWhere(access(
                        "reads a clock",
                        a -> readings.contains(a.getName())
                                        && Set.of("java.lang", "java.time")
                                                .contains(a.getTargetOwner().getPackageName())
                                || isNewWithoutArguments(a, java.util.Date.class.getName())))
                .check(HOUSE);
    }

    @Test
    void chanceIsPassedIn() {
        noClasses()
                .that()
                .resideOutsideOfPackages(EDGES)
                .should()
                .accessTargetWhere(access(
                        "draws without a seed",
                        a -> isNewWithoutArguments(a, java.util.Random.class.getName())
                                || isNewWithoutArguments(a, java.util.SplittableRandom.class.getName())
                                || a.getTargetOwner().getName().equals("java.security.SecureRandom")
                                || a.getTargetOwner().getName().equals("java.util.concurrent.ThreadLocalRandom")
                                || Set.of("random", "randomUUID", "shuffle").contains(a.getName())
                                        && Set.of("java.lang.Math", "java.util.UUID", "java.util.Collections")
                                                .contains(a.getTargetOwner().getName())))
                .check(HOUSE);
    }

    @Test
    void nothingSharedCanBeReplaced() {
        fields().that()
                .areStatic()
                .and()
                .doNotHaveModifier(JavaModifier.SYNTHETIC)
                .should()
                .beFinal()
                .check(HOUSE);
    }

    @Test
    void everyPackageSaysThatNothingIsNullUnlessMarked() {
        assertThat(HOUSE.stream().map(JavaClass::getPackage).distinct())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.isAnnotatedWith(NullMarked.class))
                        .as("@NullMarked in package-info.java of %s", p.getName())
                        .isTrue());
    }

    @Test
    void filesStayShort() throws IOException {
        Map<Path, Long> lines = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            files.filter(f -> f.toString().endsWith(".java")).forEach(f -> lines.put(f, lines(f)));
        }
        assertThat(lines)
                .isNotEmpty()
                .allSatisfy((file, count) ->
                        assertThat(count).as("lines of %s", file).isLessThanOrEqualTo(400));
        List<Long> sorted = lines.values().stream().sorted().toList();
        assertThat(sorted.get(sorted.size() / 2)).as("median").isLessThan(100);
    }

    private static long lines(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isForeign(JavaClass c) {
        String name = c.getBaseComponentType().getPackageName();
        return !name.equals("hingewise") && !name.startsWith("hingewise.");
    }

    private static boolean isNewWithoutArguments(JavaAccess<?> access, String type) {
        return access.getTarget().getFullName().equals(type + ".<init>()");
    }

    private static DescribedPredicate<JavaAccess<?>> access(
            String description, java.util.function.Predicate<JavaAccess<?>> predicate) {
        return describe(description, predicate);
    }
}
