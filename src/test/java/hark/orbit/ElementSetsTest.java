package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ElementSetsTest {
  private static final String LINE1 =
      "1 25544U 98067A   19343.69339541  .00001764  00000-0  38792-4 0  9991";
  private static final String LINE2 =
      "2 25544  51.6439 211.2001 0007417  17.6667  85.6398 15.50103472202482";
  private static final String OMM =
      """
      {"OBJECT_NAME":"STATION","OBJECT_ID":"1998-067A","EPOCH":"2019-12-09T16:38:29.363424",
       "MEAN_MOTION":15.50103472,"ECCENTRICITY":".0007417","INCLINATION":51.6439,
       "RA_OF_ASC_NODE":211.2001,"ARG_OF_PERICENTER":17.6667,"MEAN_ANOMALY":85.6398,
       "NORAD_CAT_ID":25544,"BSTAR":"0.000038792","MEAN_MOTION_DOT":0.00001764,"MEAN_MOTION_DDOT":0}
      """;

  private static List<ElementSet> parse(String text) {
    return ElementSets.parse("f.tle", text);
  }

  private static String problem(String text) {
    return assertThrows(BadInput.class, () -> parse(text)).getMessage();
  }

  @Test
  void linesWithAndWithoutNamesMayBeMixed() {
    List<ElementSet> sets =
        parse("# comment\n0 FIRST\n" + LINE1 + "\r\n" + LINE2 + "\n\n" + LINE1 + "\n" + LINE2);
    assertEquals(2, sets.size());
    assertEquals("FIRST", sets.get(0).name().orElseThrow());
    assertTrue(sets.get(1).name().isEmpty());
    assertEquals("25544", sets.get(1).objectId());
    assertEquals("f.tle:3", sets.get(0).origin());
    assertEquals(Instant.parse("2019-12-09T16:38:29.363424Z"), sets.get(0).epoch());
  }

  @Test
  void jsonGivesTheSameElementsAsLines() {
    ElementSet lines = ElementSets.ofLines(LINE1, LINE2);
    ElementSet json = parse("[" + OMM + "]").get(0);
    EarthModel earth = EarthModel.bundled();
    Instant later = lines.epoch().plusSeconds(86400);
    State a = Trajectory.of(lines, earth).temeAt(later).orElseThrow();
    State b = Trajectory.of(json, earth).temeAt(later).orElseThrow();
    double oneMillimeter = 1e-3;
    assertEquals(a.xMeters(), b.xMeters(), oneMillimeter);
    assertEquals(a.yMeters(), b.yMeters(), oneMillimeter);
    assertEquals(a.zMeters(), b.zMeters(), oneMillimeter);
    assertEquals("STATION", json.name().orElseThrow());
    assertEquals(json, parse(OMM).get(0));
  }

  @Test
  void nineDigitNumbersFly() {
    ElementSet set = parse(OMM.replace("25544", "799501234")).get(0);
    assertEquals("799501234", set.objectId());
    assertTrue(Trajectory.of(set, EarthModel.bundled()).temeAt(set.epoch()).isPresent());
  }

  @Test
  void alphaFiveNumbersAreRead() {
    String line1 = TrajectoryReferenceTest.checked(LINE1.replace("25544", "T5544"));
    String line2 = TrajectoryReferenceTest.checked(LINE2.replace("25544", "T5544"));
    ElementSet set = ElementSets.ofLines(line1, line2);
    assertEquals("T5544", set.objectId());
    assertTrue(Trajectory.of(set, EarthModel.bundled()).temeAt(set.epoch()).isPresent());
  }

  @Test
  void aWrongChecksumSaysFoundAndComputed() {
    assertEquals(
        "f.tle:2: TLE line 2 checksum is 3, computed 2 · copy the two lines again from the source",
        problem(LINE1 + "\n" + LINE2.substring(0, 68) + "3"));
  }

  @Test
  void allProblemsOfAFileAreNamedAtOnce() {
    String wrongDay = TrajectoryReferenceTest.checked(LINE1.replace("19343.6", "19443.6"));
    String notANumber = TrajectoryReferenceTest.checked(LINE2.replace(" 51.6439", "     NaN"));
    String text = wrongDay + "\n" + notANumber + "\n" + LINE1.substring(0, 60) + "\n" + LINE2;
    List<String> found = problem(text).lines().toList();
    assertEquals(3, found.size(), found.toString());
    assertTrue(found.get(0).startsWith("f.tle:1: day 443.69339541 of the epoch"), found.get(0));
    assertTrue(found.get(1).startsWith("f.tle:2: the inclination 'NaN'"), found.get(1));
    assertTrue(found.get(2).startsWith("f.tle:3: TLE line 1 has 60 characters"), found.get(2));
  }

  @Test
  void loneLinesAndForeignObjectsAreRefused() {
    assertTrue(problem(LINE1).contains("has no line 2 after it"));
    assertTrue(problem(LINE2).contains("has no line 1 before it"));
    assertTrue(problem("A NAME").contains("'A NAME' is not followed by TLE line 1"));
    String other = TrajectoryReferenceTest.checked(LINE2.replace("25544", "25545"));
    assertTrue(problem(LINE1 + "\n" + other).contains("25545 in TLE line 2 and 25544 in line 1"));
  }

  @Test
  void badJsonIsRefusedInPlainWords() {
    assertTrue(problem("[" + OMM.replace("51.6439", "\"NaN\"") + "]").contains("INCLINATION NaN"));
    assertTrue(problem(OMM.replace("2019-12-09T", "2019-13-09T")).contains("EPOCH '2019-13-09T"));
    assertTrue(
        problem(OMM.replace("\"MEAN_MOTION\"", "\"MEAN\"")).contains("MEAN_MOTION is missing"));
    assertTrue(problem("[" + OMM).contains("not JSON"));
    assertTrue(problem("[1]").contains("an OMM object was expected"));
    assertTrue(problem("[]").contains("no element set"));
    assertTrue(problem("[".repeat(5000)).contains("not JSON"));
  }

  @Test
  void emptinessIsRefused() {
    assertTrue(problem("").contains("the file is empty"));
    assertTrue(problem("  \n\n").contains("the file is empty"));
    assertTrue(problem("# only a comment\n").contains("no element set"));
  }

  @Test
  void tenMegabytesOfNoiseAreRefusedQuicklyWithFewWords() {
    byte[] noise = new byte[10_000_000];
    new Random(7).nextBytes(noise);
    String binary = new String(noise, StandardCharsets.UTF_8);
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < noise.length; i++) {
      letters.append(i % 70 == 69 ? '\n' : (char) ('0' + (noise[i] & 63)));
    }
    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> {
          assertTrue(problem(binary).contains("not text"));
          assertTrue(problem(letters.toString()).lines().count() < 60);
          assertTrue(problem("1 " + "x".repeat(10_000_000)).lines().count() < 60);
        });
  }

  @Test
  void theNewestSetInForceIsChosen() {
    ElementSet old = ElementSets.ofLines(LINE1, LINE2);
    ElementSet young =
        ElementSets.ofLines(
            TrajectoryReferenceTest.checked(LINE1.replace("19343.6", "19345.6")), LINE2);
    List<ElementSet> both = List.of(young, old);
    Instant between = old.epoch().plusSeconds(86400);
    assertEquals(List.of(old), ElementSets.inForce(both, between));
    assertEquals(List.of(young), ElementSets.inForce(both, between.plusSeconds(2 * 86400)));
    assertEquals(List.of(old), ElementSets.inForce(both, old.epoch().minusSeconds(86400)));
  }
}
