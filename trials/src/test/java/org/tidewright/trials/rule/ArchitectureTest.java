package org.tidewright.trials.rule;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceRule;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which module may use which, and what computing code must not touch. */
class ArchitectureTest {
    private static final String OURS = "org.tidewright.";

    /** Each module and those it may use. Arrows point one way, from the program down to the sea. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("testkit", Set.of()),
            Map.entry("seawater", Set.of()),
            Map.entry("numerics", Set.of()),
            Map.entry("plan", Set.of("seawater")),
            Map.entry("twin", Set.of("seawater", "numerics", "plan")),
            Map.entry("husbandry", Set.of("seawater", "numerics", "plan", "twin")),
            Map.entry("store", Set.of("seawater", "plan", "twin", "husbandry")),
            Map.entry("web", Set.of("seawater", "plan", "twin", "husbandry")),
            Map.entry("fleet", Set.of("seawater", "plan", "twin", "husbandry")),
            Map.entry("app", Set.of("seawater", "numerics", "plan", "twin", "husbandry", "store", "web")),
            Map.entry("bench", Set.of("seawater", "numerics", "plan", "twin", "husbandry", "store")));

    /** Given the same input these give the same result: no clock, no dice, no disk, no network, nothing printed. */
    private static final String[] COMPUTING =
            packagesOf(Stream.of("seawater", "numerics", "plan", "twin", "husbandry"));

    private static final DescribedPredicate<JavaAccess<?>> CLOCK = named(
            "java\\.time\\..*\\.(now|system\\w*)\\(.*",
            "java\\.lang\\.System\\.(currentTimeMillis|nanoTime)\\(\\)",
            "java\\.util\\.Date\\.<init>\\(\\)");

    private static JavaClasses everything;

    @BeforeAll
    static void readClasses() {
        List<Path> compiled = Checkout.modules().stream()
                .map(module -> module.resolve("target/classes"))
                .toList();
        everything = new ClassFileImporter().importPaths(compiled);
    }

    static Stream<String> modulesWithCode() {
        return Checkout.modules().stream().map(module -> module.getFileName().toString());
    }

    @ParameterizedTest
    @MethodSource("modulesWithCode")
    void aModuleUsesOnlyThoseBelowIt(String module) {
        assertThat(ARROWS).as("what each module may use").containsKey(module);
        String[] seen = packagesOf(Stream.concat(Stream.of(module), ARROWS.getOrDefault(module, Set.of()).stream()));
        classes()
                .that()
                .resideInAPackage(OURS + module + "..")
                .should()
                .onlyDependOnClassesThat(
                        not(resideInAPackage("org.tidewright..")).or(resideInAnyPackage(seen)))
                .because("arrows between modules point one way")
                .check(everything);
    }

    @Test
    void packagesDoNotUseEachOtherInCircles() {
        List<String> borne = new FrozenList("package-circles.txt").lines();
        circles(borne).check(everything);
        for (String line : borne) {
            List<String> others =
                    borne.stream().filter(other -> !other.equals(line)).toList();
            assertThat(circles(others).evaluate(everything).hasViolation())
                    .as("whether %s still closes a circle; if not, take it out of the frozen list", line)
                    .isTrue();
        }
    }

    private static ArchRule circles(List<String> borne) {
        SliceRule rule = slices().matching(OURS + "(**)").should().beFreeOfCycles();
        for (String line : borne) {
            String[] ends = line.split(" -> ", -1);
            rule = rule.ignoreDependency(resideInAPackage(ends[0]), resideInAPackage(ends[1]));
        }
        return rule;
    }

    @Test
    void computingCodeReadsNoClock() {
        noClasses()
                .that()
                .resideInAnyPackage(COMPUTING)
                .should()
                .accessTargetWhere(CLOCK)
                .because("a run must be repeatable: the moment is given to it")
                .check(everything);
    }

    @Test
    void computingCodeThrowsNoDice() {
        noClasses()
                .that()
                .resideInAnyPackage(COMPUTING)
                .should()
                .accessTargetWhere(named(
                        "java\\.lang\\.(Strict)?Math\\.random\\(\\)",
                        "java\\.util\\.(Splittable)?Random\\.<init>\\(\\)",
                        "java\\.security\\.SecureRandom\\..*",
                        "java\\.util\\.concurrent\\.ThreadLocalRandom\\.current\\(\\)",
                        "java\\.util\\.UUID\\.randomUUID\\(\\)"))
                .because("draws come from a seed, by name: see numerics.sample")
                .check(everything);
    }

    @Test
    void computingCodePrintsNothing() {
        noClasses()
                .that()
                .resideInAnyPackage(COMPUTING)
                .should()
                .accessTargetWhere(named("java\\.lang\\.System\\.(out|err|in|console\\(\\))"))
                .because("what there is to say is in the result")
                .check(everything);
    }

    @Test
    void computingCodeOpensNoDatabaseAndNoConnection() {
        noClasses()
                .that()
                .resideInAnyPackage(COMPUTING)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "java.net..", "java.nio.channels..")
                .because("the world outside is behind ports, kept by store, web and app")
                .check(everything);
    }

    @Test
    void computingCodeOpensNoFileExceptAPlan() {
        noClasses()
                .that()
                .resideInAnyPackage(COMPUTING)
                .and()
                .resideOutsideOfPackage(OURS + "plan.text..")
                .should()
                .dependOnClassesThat(
                        resideInAPackage("java.nio.file..").or(nameMatching("java\\.io\\.(File|RandomAccessFile).*")))
                .because("only plan.text reads a file, the plan")
                .check(everything);
    }

    @Test
    void onlyWebAndAppKnowTheWebServer() {
        noClasses()
                .that()
                .resideOutsideOfPackages(OURS + "web..", OURS + "app..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..", "gg.jte..")
                .check(everything);
    }

    @Test
    void onlyStoreSpeaksSql() {
        noClasses()
                .that()
                .resideOutsideOfPackage(OURS + "store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..")
                .check(everything);
    }

    @Test
    void onlyOnePackageKnowsWhichDatabaseItIs() {
        noClasses()
                .that()
                .resideOutsideOfPackage(OURS + "store.database")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.sqlite..")
                .because("what is particular to one database stands in one place")
                .check(everything);
    }

    @Test
    void onlyOnePackageKnowsTheConstraintSolver() {
        noClasses()
                .that()
                .resideOutsideOfPackage(OURS + "husbandry.arrival.search")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.chocosolver..")
                .because("a puzzle goes in and a schedule comes out")
                .check(everything);
    }

    @Test
    void onlyOnePackageKnowsTheCalendarLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage(OURS + "husbandry.calendar")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("biweekly..")
                .because("days go in and the text of a file comes out")
                .check(everything);
    }

    @Test
    void whatIsWrittenIsDatedByTheClockThatWasGiven() {
        noClasses()
                .that()
                .resideInAPackage(OURS + "store..")
                .should()
                .accessTargetWhere(CLOCK)
                .because("the moment comes from the clock the store was opened with")
                .check(everything);
    }

    @Test
    void noPackageIsADrawerForAnything() {
        noClasses()
                .should()
                .resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..", "..impl..")
                .because("a package is named for its subject")
                .check(everything);
    }

    private static String[] packagesOf(Stream<String> modules) {
        return modules.map(module -> OURS + module + "..").toArray(String[]::new);
    }

    /** A call, a constructor, a method reference or a field whose full name matches. */
    private static DescribedPredicate<JavaAccess<?>> named(String... patterns) {
        Pattern pattern = Pattern.compile(String.join("|", patterns));
        return DescribedPredicate.describe(
                "it is named " + String.join(" or ", patterns),
                access -> pattern.matcher(access.getTarget().getFullName()).matches());
    }
}
