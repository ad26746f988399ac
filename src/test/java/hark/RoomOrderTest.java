package hark;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Holds the order of rooms and what each may touch. A room imports only rooms before it in {@link
 * #ORDER}; see decision 0001.
 */
class RoomOrderTest {
  private static final List<String> ORDER =
      List.of(
          "problem",
          "orbit",
          "station",
          "link",
          "power",
          "fault",
          "signal",
          "evidence",
          "ensemble",
          "plan",
          "mission",
          "journal",
          "assessment",
          "document",
          "trial",
          "console",
          "cli");

  /** Rooms that may meet a disk or a network; everything else takes values and gives values. */
  private static final String[] OUTWARD = {
    "hark.mission..",
    "hark.journal..",
    "hark.document..",
    "hark.trial..",
    "hark.console..",
    "hark.cli.."
  };

  /** Hands a folder of full Orekit data to Orekit, when somebody names one; thinks of nothing. */
  private static final String DATA_FOLDER = "hark.orbit.EarthModel";

  private static final List<String> WALL_CLOCKS =
      List.of(
          "java.time.Instant.now()",
          "java.time.LocalDate.now()",
          "java.time.LocalDateTime.now()",
          "java.time.OffsetDateTime.now()",
          "java.time.ZonedDateTime.now()",
          "java.lang.System.currentTimeMillis()",
          "java.util.Date.<init>()");

  private static final JavaClasses PROJECT =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("hark");

  @Test
  void theWholeProjectIsLookedAt() {
    assertTrue(PROJECT.contain("hark.cli.Main"));
  }

  @Test
  void everyPackageIsARoomOfTheList() {
    classes()
        .should(
            new ArchCondition<>("live in a room that the order lists") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                if (roomOf(type) < 0) {
                  events.add(
                      SimpleConditionEvent.violated(
                          type, type.getName() + " lives in no room of the order " + ORDER));
                }
              }
            })
        .check(PROJECT);
  }

  @Test
  void aRoomImportsOnlyRoomsBeforeIt() {
    classes()
        .should(
            new ArchCondition<>("import only rooms before their own") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                type.getDirectDependenciesFromSelf().stream()
                    .filter(RoomOrderTest::looksUp)
                    .forEach(d -> events.add(SimpleConditionEvent.violated(d, d.getDescription())));
              }
            })
        .check(PROJECT);
  }

  @Test
  void onlyOrbitKnowsOrekit() {
    noClasses()
        .that(resideOutsideOfPackage("hark.orbit.."))
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.orekit..")
        .check(PROJECT);
  }

  @Test
  void onlyTheCommandLineReadsAClock() {
    noClasses()
        .that(resideOutsideOfPackage("hark.cli.."))
        .should()
        .accessTargetWhere(describe("the wall clock is read", RoomOrderTest::readsWallClock))
        .check(PROJECT);
  }

  @Test
  void thinkingRoomsReadNoFilesAndOpenNoSockets() {
    noClasses()
        .that(
            describe(
                "think only",
                type ->
                    !resideInAnyPackage(OUTWARD).test(type) && !type.getName().equals(DATA_FOLDER)))
        .should()
        .dependOnClassesThat(
            describe(
                "reach files or sockets",
                type ->
                    type.getPackageName().startsWith("java.net")
                        || type.getName().equals("java.nio.file.Files")
                        || type.getName().startsWith("java.nio.channels.")
                        || type.getName().matches("java\\.io\\.(File(?!$).+|RandomAccessFile)")))
        .check(PROJECT);
  }

  @Test
  void onlyTheCommandLinePrints() {
    noClasses()
        .that(resideOutsideOfPackage("hark.cli.."))
        .should()
        .accessTargetWhere(
            describe(
                "standard output or error is used",
                access ->
                    access
                        .getTarget()
                        .getFullName()
                        .matches("java\\.lang\\.System\\.(out|err)|.*\\.printStackTrace\\(\\)")))
        .check(PROJECT);
  }

  @Test
  void nothingStaticCanBeReassigned() {
    fields().that().areStatic().should().beFinal().check(PROJECT);
  }

  private static int roomOf(JavaClass type) {
    String[] parts = type.getPackageName().split("\\.", -1);
    return parts.length < 2 ? -1 : ORDER.indexOf(parts[1]);
  }

  private static boolean looksUp(Dependency dependency) {
    JavaClass target = dependency.getTargetClass().getBaseComponentType();
    return target.getPackageName().matches("hark(\\..*)?")
        && roomOf(target) > roomOf(dependency.getOriginClass());
  }

  private static boolean readsWallClock(JavaAccess<?> access) {
    String target = access.getTarget().getFullName();
    return target.startsWith("java.time.Clock.system") || WALL_CLOCKS.contains(target);
  }
}
