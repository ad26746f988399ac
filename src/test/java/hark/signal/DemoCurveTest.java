package hark.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The demo's curve is what the simulator makes of the demo's orbits. */
class DemoCurveTest {
  private static final Path RECORDINGS = DemoCurve.FOLDER.resolve("recordings");

  @Test
  void theFilesInTheDemoAreWhatTheSimulatorMakes() throws IOException {
    List<DopplerPoint> points = DemoCurve.points(DemoCurve.SEED);
    assertEquals(DemoCurve.csv(points), Files.readString(RECORDINGS.resolve("first-contact.csv")));
    assertEquals(DemoCurve.tdm(points), Files.readString(RECORDINGS.resolve("first-contact.tdm")));
  }

  @Test
  void everyFrameLiesInTheContactThatTheLogTellsOf() throws IOException {
    for (DopplerPoint point : DemoCurve.points(DemoCurve.SEED)) {
      assertTrue(point.time().isAfter(Instant.parse("2026-10-06T09:40:10Z")));
      assertTrue(point.time().isBefore(Instant.parse("2026-10-06T09:47:20Z")));
    }
  }
}
