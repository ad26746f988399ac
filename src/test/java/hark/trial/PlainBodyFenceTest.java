package hark.trial;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The twin would prove nothing if it computed with what it is to check. */
class PlainBodyFenceTest {
  /** Descriptions of a body, of its light and of what happens to it: numbers, no physics. */
  private static final Set<String> DESCRIPTIONS =
      Set.of(
          "PowerModel",
          "Face",
          "Orientation",
          "CellBehaviour",
          "BeaconPace",
          "OnboardChange",
          "OnboardCommand",
          "Illumination",
          "SunPath",
          "SimulationRequest$TimedChange");

  private static final JavaClasses PROJECT =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("hark.trial", "hark.power", "hark.link", "hark.ensemble");

  @Test
  void thePlainBodyKnowsOnlyTheDescriptionsOfTheSimulationItChecks() {
    assertTrue(PROJECT.contain("hark.trial.PlainBody"));
    noClasses()
        .that()
        .resideInAPackage("hark.trial")
        .should()
        .dependOnClassesThat(
            describe(
                "compute in hark.power",
                type ->
                    type.getPackageName().equals("hark.power")
                        && DESCRIPTIONS.stream().noneMatch(name -> isPartOf(type.getName(), name))))
        .check(PROJECT);
  }

  /** Rooms below {@code hark.trial} hand numbers in; the hidden simulators ask nobody. */
  @Test
  void hiddenTruthsAskNeitherTheLinkNorTheDiagnosis() {
    assertTrue(PROJECT.contain("hark.trial.PlainLink"));
    noClasses()
        .that()
        .resideInAPackage("hark.trial")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("hark.link..", "hark.ensemble..", "hark.trial.campaign..")
        .check(PROJECT);
  }

  private static boolean isPartOf(String type, String description) {
    String whole = "hark.power." + description;
    return type.equals(whole) || type.startsWith(whole + "$");
  }

  /** The paths of light share only the shadow edges; the Sun's place is read again here. */
  @Test
  void theSunsPathIsReadAndNotAsked() {
    Set<String> asked = Set.of("zenith", "along", "across", "cosineTo");
    noClasses()
        .that()
        .resideInAPackage("hark.trial")
        .should()
        .callMethodWhere(
            describe(
                "ask the Sun's path for a result",
                call ->
                    call.getTargetOwner().getName().equals("hark.power.SunPath")
                        && asked.contains(call.getName())))
        .check(PROJECT);
  }
}
