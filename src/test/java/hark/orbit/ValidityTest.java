package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ends of elements, against where the tables of AIAA 2006-6753 stop; and the sample files. */
class ValidityTest {
  private static final Path SAMPLES = Path.of("tle-samples");
  private static final EarthModel EARTH = EarthModel.bundled();

  private static Map<String, ElementSet> samples() throws IOException {
    Map<String, ElementSet> sets = new HashMap<>();
    String text = Files.readString(SAMPLES.resolve("aiaa-2006-6753.tle"));
    ElementSets.parse("samples", text).forEach(set -> sets.put(set.objectId(), set));
    return sets;
  }

  private static Optional<Double> endMinutes(ElementSet set) {
    Trajectory trajectory = Trajectory.of(set, EARTH);
    return trajectory
        .validUntil(set.epoch(), set.epoch().plus(Duration.ofDays(5)))
        .map(end -> trajectory.secondsAt(end) / 60);
  }

  @Test
  void elementsEndBetweenTheLastRowOfTheTableAndTheNext() throws IOException {
    Map<String, double[]> lastAndNextMinutes =
        Map.of(
            "22312", new double[] {474.2028672, 494.2028672},
            "28872", new double[] {50, 55},
            "29141", new double[] {420, 440});
    Map<String, ElementSet> sets = samples();
    lastAndNextMinutes.forEach(
        (id, between) -> {
          double end = endMinutes(sets.get(id)).orElseThrow();
          assertTrue(end > between[0] && end <= between[1], id + " ends at " + end);
        });
  }

  @Test
  void meanEccentricityBelowTheTheoryEndsElements() throws IOException {
    // end of validity in the pass and eclipse tables: 88327.3113 s
    double end = endMinutes(samples().get("28350")).orElseThrow() * 60;
    assertEquals(88327.3113, end, 0.01);
  }

  @Test
  void elementsThatEndedAreNotRaisedAgain() throws IOException {
    ElementSet set = samples().get("29141");
    Trajectory trajectory = Trajectory.of(set, EARTH);
    Instant later = set.epoch().plus(Duration.ofDays(6));
    assertEquals(Optional.of(later), trajectory.validUntil(later, later.plus(Duration.ofDays(1))));
  }

  @Test
  void healthyOrbitsHaveNoEnd() throws IOException {
    for (String id : new String[] {"00005", "06251", "28057", "08195", "26900"}) {
      assertEquals(Optional.empty(), endMinutes(samples().get(id)), id);
    }
  }

  @Test
  void everySampleFileIsReadOrRefusedAsItsNoteSays() throws IOException {
    int read = 0;
    try (var files = Files.newDirectoryStream(SAMPLES, "*.tle")) {
      for (Path file : files) {
        String text = Files.readString(file);
        if (file.getFileName().toString().contains("error-cases")) {
          assertThrows(BadInput.class, () -> ElementSets.parse(file.toString(), text));
        } else {
          read += ElementSets.parse(file.toString(), text).size();
        }
        String notes = Files.readString(SAMPLES.resolve("README.md"));
        assertTrue(notes.contains("`" + file.getFileName() + "`"), file + " has no origin");
      }
    }
    assertTrue(read >= 38, "sets read: " + read);
  }
}
