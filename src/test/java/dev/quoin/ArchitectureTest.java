package dev.quoin;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The shape of the project: packages in the order in which the data flows, libraries fenced, writers and printers named. */
class ArchitectureTest {
    /** Each may import only those before it. */
    private static final List<String> ORDER = List.of(
            "problem",
            "geometry",
            "table",
            "drawing",
            "order",
            "shop",
            "optics",
            "lettering",
            "code",
            "art",
            "toolpath",
            "plate",
            "paper",
            "format",
            "store",
            "verify",
            "job",
            "cli");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.quoin");

    static Stream<String> packages() {
        return ORDER.stream();
    }

    @Test
    void everyClassStandsInAPackageOfTheList() {
        assertTrue(CLASSES.size() > 80, "only " + CLASSES.size() + " classes were seen");
        classes().should().resideInAnyPackage(names(ORDER)).check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageImportsOnlyThoseAboveIt(String name) {
        List<String> below = new ArrayList<>(ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()));
        if (name.equals("verify")) {
            // A proof that used the writer's own code would prove nothing.
            below.add("format");
        }
        if (!below.isEmpty()) {
            noClasses()
                    .that()
                    .resideInAPackage("dev.quoin." + name)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(names(below))
                    .allowEmptyShould(true)
                    .check(CLASSES);
        }
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("dev.quoin.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @ParameterizedTest
    @CsvSource({
        "org.apache.commons.csv..,table",
        "org.apache.batik..,drawing",
        "org.w3c.dom..,drawing paper",
        "freemarker..,art paper",
        "picocli..,cli",
        "me.tongfei..,cli",
        "com.google.zxing..,code verify",
        "org.apache.pdfbox..,format paper",
        "com.openhtmltopdf..,paper",
        "java.awt.font..,lettering",
        "org.ojalgo..,toolpath",
        "org.locationtech.jts..,geometry toolpath lettering plate verify",
    })
    void aLibraryIsFenced(String library, String allowed) {
        noClasses()
                .that()
                .resideOutsideOfPackages(names(List.of(allowed.split(" "))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(CLASSES);
    }

    @Test
    void onlyStoreWritesFiles() {
        noClasses()
                .that()
                .resideOutsideOfPackage("dev.quoin.store")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.FileOutputStream")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.FileWriter")
                .orShould()
                .callMethodWhere(WritesFiles.CALL)
                .check(CLASSES);
    }

    @Test
    void onlyCliPrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage("dev.quoin.cli")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(CLASSES);
    }

    /** Java would make a class for each kind of annotation at every start. */
    @Test
    void commandsHaveNoAnnotationsOfTheirLibrary() {
        noClasses()
                .should()
                .dependOnClassesThat(
                        resideInAPackage("picocli..").and(describe("are annotations", JavaClass::isAnnotation)))
                .check(CLASSES);
    }

    private static String[] names(List<String> packages) {
        return packages.stream().map(name -> "dev.quoin." + name).toArray(String[]::new);
    }
}
