package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SkyCommandsTest {
  /** The near-decay object and another of AIAA 2006-6753, and one of 2019. */
  private static final String ELEMENTS =
      """
      DRAGGED
      1 28350U 04020A   06167.21788666  .16154492  76267-5  18678-3 0  8894
      2 28350  64.9977 345.6130 0024870 260.7578  99.9590 16.47856722116490
      1 06251U 62025E   06176.82412014  .00008885  00000-0  12808-3 0  3985
      2 06251  58.0579  54.0425 0030035 139.1568 221.1854 15.56387291  6774
      """;

  private static final String[] SPAN = {"--from", "2006-06-17T12:00:00Z", "--days", "1"};
  private static final String[] SITE = {"--site", "48.9,8.4,115", "--name", "hill"};

  @TempDir private Path folder;
  private Path file;

  private record Ran(int code, String out, String err) {}

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("two.tle"), ELEMENTS);
  }

  private Ran run(String command, String[]... options) {
    List<String> args = new ArrayList<>(List.of(command, "--elements", file.toString()));
    Arrays.stream(options).map(Arrays::asList).forEach(args::addAll);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Clock clock = Clock.fixed(Instant.parse("2006-06-17T12:00:00Z"), ZoneOffset.UTC);
    int code =
        Main.run(clock, new PrintWriter(out), new PrintWriter(err), args.toArray(new String[0]));
    return new Ran(code, out.toString(), err.toString());
  }

  private static String[] of(String... words) {
    return words;
  }

  private static JsonNode json(Ran ran) throws IOException {
    assertEquals(ExitCode.DONE, ran.code(), ran.err());
    return new ObjectMapper().readTree(ran.out());
  }

  @Test
  void passesComeByAosAndADecayedObjectEndsWithOneLine() throws IOException {
    Ran ran = run("passes", SITE, SPAN, of("--format", "json"));
    JsonNode passes = json(ran).get("passes");
    assertTrue(passes.size() > 5, ran.out());
    String before = "";
    for (JsonNode pass : passes) {
      assertTrue(before.compareTo(pass.get("aos").asText()) <= 0);
      before = pass.get("aos").asText();
      assertEquals("hill", pass.get("site").asText());
      assertEquals("06251", pass.get("object").asText());
      assertTrue(pass.get("sunlitAtCulmination").isBoolean());
      assertTrue(pass.get("maxElevationDeg").isNumber());
    }
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().startsWith("28350: the elements are not valid at"), ran.err());
  }

  @Test
  void anObjectThatDecaysOnTheWayKeepsItsRowsUntilThen() throws IOException {
    String[] span = {"--from", "2006-06-16T05:13:45.407Z", "--days", "2", "--format", "json"};
    Ran ran = run("eclipses", span);
    long rows = 0;
    for (JsonNode eclipse : json(ran).get("eclipses")) {
      rows += eclipse.get("object").asText().equals("28350") ? 1 : 0;
    }
    assertEquals(17, rows, "as the eclipse table has");
    // end of validity as the pass table has it, 88327.3 s after the epoch
    assertTrue(
        ran.err().startsWith("28350: the elements hold until 2006-06-17T05:45:52.7"), ran.err());
    assertEquals(1, ran.err().lines().count());
  }

  @Test
  void tracksCarryTheDopplerShiftOfAnApproachingObjectAsPositive() throws IOException {
    Ran ran =
        run("track", SITE, SPAN, of("--step", "20", "--frequency-mhz", "437", "--format", "json"));
    JsonNode track = json(ran).get("track");
    assertTrue(track.size() > 20);
    for (JsonNode row : track) {
      double expected = -row.get("rangeRateKmS").asDouble() / 299792.458 * 437e6;
      assertEquals(expected, row.get("dopplerHz").asDouble(), 0.01);
      assertTrue(row.get("sunlit").isBoolean());
    }
    assertTrue(track.get(0).get("dopplerHz").asDouble() > 0, "rising, so approaching");
    assertTrue(json(run("track", SITE, SPAN, of("--format", "json"))).get("track").size() > 5);
  }

  @Test
  void ephemeridesComeInEitherFrame() throws IOException {
    String[] span = {"--from", "2006-06-25T19:46:43.980Z", "--hours", "1", "--format", "json"};
    JsonNode teme = json(run("ephemeris", span)).get("ephemeris");
    JsonNode itrf = json(run("ephemeris", span, of("--frame", "itrf"))).get("ephemeris");
    assertEquals(61, teme.size());
    assertEquals(61, itrf.size());
    assertEquals(radius(teme.get(30)), radius(itrf.get(30)), 1e-6);
    // AIAA 2006-6753, first state of 06251; 20 ms after its epoch at most 0.2 km away
    assertEquals(3988.31022699, teme.get(0).get("xKm").asDouble(), 0.2);
  }

  private static double radius(JsonNode row) {
    double x = row.get("xKm").asDouble();
    double y = row.get("yKm").asDouble();
    return Math.hypot(Math.hypot(x, y), row.get("zKm").asDouble());
  }

  @Test
  void csvHasAHeadingAndTablesAreAligned() {
    List<String> csv = run("passes", SITE, SPAN, of("--format", "csv")).out().lines().toList();
    assertTrue(csv.get(0).startsWith("object,site,aos,culmination,los,maxElevationDeg"));
    assertEquals(11, csv.get(1).split(",").length);
    List<String> table = run("passes", SITE, SPAN).out().lines().toList();
    assertEquals(csv.size(), table.size());
    assertEquals(table.get(0).indexOf("aos"), table.get(1).indexOf("2006-"));
  }

  @Test
  void whatComesLaterIsRefusedByName() {
    for (Ran ran :
        List.of(
            run("passes", SITE, SPAN, of("--refraction")),
            run("track", SITE, SPAN, of("--refraction")))) {
      assertEquals(ExitCode.BAD_INPUT, ran.code());
      assertTrue(ran.err().contains("later version"), ran.err());
      assertEquals("", ran.out());
    }
  }

  @Test
  void nonsenseIsRefusedInPlainWords() {
    for (String[] options :
        List.of(
            of("--site", "91,0,0"),
            of("--site", "NaN,0,0"),
            of("--site", "1,2"),
            of("--site", "1,2,x"),
            of("--site", "1,2,3", "--days", "-1"),
            of("--site", "1,2,3", "--days", "NaN"),
            of("--site", "1,2,3", "--days", "100000"),
            of("--site", "1,2,3", "--from", "yesterday"),
            of("--site", "1,2,3", "--from", "2026-13-01T00:00:00Z"),
            of("--site", "1,2,3", "--from", "+999999999-01-01T00:00:00Z"),
            of("--site", "1,2,3", "--min-elevation", "95"),
            of("--site", "1,2,3", "--format", "yaml"),
            of("--site", "1,2,3", "--orekit-data", "no/such/folder"),
            of())) {
      Ran ran = run("passes", options);
      assertEquals(ExitCode.BAD_INPUT, ran.code(), Arrays.toString(options));
      assertTrue(ran.err().lines().count() <= 3, ran.err());
      assertEquals("", ran.out());
    }
    assertEquals(ExitCode.BAD_INPUT, run("track", SITE, SPAN, of("--step", "0")).code());
    assertEquals(ExitCode.BAD_INPUT, run("ephemeris", of("--step", "0")).code());
    assertEquals(ExitCode.BAD_INPUT, run("track", SITE, of("--frequency-mhz", "NaN")).code());
  }

  @Test
  void aMissingFileIsBadInput() {
    file = folder.resolve("none.tle");
    Ran ran = run("passes", SITE, SPAN);
    assertEquals(ExitCode.BAD_INPUT, ran.code());
    assertTrue(ran.err().contains("there is no such file"), ran.err());
  }

  @Test
  void theSamePassesComeHoweverManyTimesOneAsks() {
    assertEquals(run("passes", SITE, SPAN).out(), run("passes", SITE, SPAN).out());
  }
}
