package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands about the sky write for other programs, read back. */
class SkyOutTest {
  private static final String ELEMENTS = "tle-samples/demo-launch-731.tle";

  @TempDir private Path temp;
  private Path demo;

  private record Ran(int code, String out, String err) {}

  @BeforeEach
  void writeDemo() {
    demo = temp.resolve("demo");
    DemoMission.writeTo(demo);
  }

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString());
  }

  private static String done(String... args) {
    Ran ran = run(args);
    assertEquals(ExitCode.DONE, ran.code(), ran.err());
    return ran.out();
  }

  @Test
  void anEphemerisMessageServesAsElementsAgain() throws IOException {
    String[] span = {"--from", "2026-10-13T09:00:00Z", "--object", "97311"};
    List<String> args = new ArrayList<>(List.of("ephemeris", "--elements", ELEMENTS));
    args.addAll(List.of(span));
    args.addAll(List.of("--hours", "3", "--step", "60", "--format", "oem"));
    Path oem = Files.writeString(temp.resolve("a.oem"), done(args.toArray(String[]::new)));
    JsonNode direct = pass(ELEMENTS);
    JsonNode again = pass(oem.toString());
    double tenMilliseconds = 10;
    for (String key : List.of("aos", "culmination", "los")) {
      long apart =
          Instant.parse(direct.get(key).asText()).toEpochMilli()
              - Instant.parse(again.get(key).asText()).toEpochMilli();
      assertEquals(0, apart, tenMilliseconds, key);
    }
    assertEquals(
        direct.get("maxElevationDeg").asDouble(), again.get("maxElevationDeg").asDouble(), 1e-3);
  }

  private static JsonNode pass(String elements) throws IOException {
    String json =
        done(
            "passes",
            "--elements",
            elements,
            "--object",
            "97311",
            "--site",
            "51.42,4.87,8",
            "--from",
            "2026-10-13T09:05:00Z",
            "--days",
            "0.02",
            "--format",
            "json");
    return new ObjectMapper().readTree(json).get("passes").get(0);
  }

  @Test
  void aStateTellsHowWellItIsKnownBesideItsTables() throws IOException {
    String opm =
        "CCSDS_OPM_VERS = 3.0\nCREATION_DATE = 2026-10-06T04:00:00\nORIGINATOR = D\n"
            + "OBJECT_NAME = CORNCRAKE\nOBJECT_ID = 2026-731Z\nCENTER_NAME = EARTH\n"
            + "REF_FRAME = TEME\nTIME_SYSTEM = UTC\nEPOCH = 2026-10-06T04:26:00\nX = 6878.0\n"
            + "Y = 0.0\nZ = 0.0\nX_DOT = 0.0\nY_DOT = -0.9786\nZ_DOT = 7.5407\n";
    Path file = Files.writeString(temp.resolve("a.opm"), opm);
    Ran ran = run("eclipses", "--elements", file.toString(), "--from", "2026-10-06T04:26:00Z");
    assertEquals(ExitCode.DONE, ran.code(), ran.err());
    assertTrue(ran.out().lines().count() > 10, ran.out());
    assertTrue(ran.err().contains("2026-731Z: a state of 2026-10-06T04:26:00"), ran.err());
    assertTrue(ran.err().contains("0.0 s at first and 7 s after a day"), ran.err());
  }

  @Test
  void everyFormOfTheElementsComesBackAsTheSameObjects() {
    List<String> ids = List.of("97311", "97312", "97314", "97315");
    for (String form : List.of("tle", "omm", "omm-xml", "omm-json")) {
      List<ElementSet> sets =
          ElementSets.parse(form, done("orbit", demo.toString(), "--write", form));
      assertEquals(ids, sets.stream().map(ElementSet::objectId).toList(), form);
      assertEquals(15.19241217, sets.get(0).meanMotionRevPerDay(), 1e-9, form);
      assertEquals(304.8725, sets.get(0).meanAnomalyDeg(), 1e-9, form);
      assertEquals(1.4e-4, sets.get(0).bstar(), 1e-12, form);
    }
    assertEquals(ExitCode.BAD_INPUT, run("orbit", demo.toString(), "--write", "pdf").code());
  }

  @Test
  void aFileForEachPassSaysWhereToTune() throws IOException {
    Path folder = temp.resolve("tables");
    String out =
        done(
            "track",
            demo.toString(),
            "--station",
            "Saltmere",
            "--object",
            "97312",
            "--days",
            "0.5",
            "--step",
            "10",
            "--frequency-mhz",
            "436.73",
            "--downlink-mhz",
            "436.73",
            "--uplink-mhz",
            "145.9",
            "--out",
            folder.toString());
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.sorted().toList();
    }
    assertEquals(out.lines().count(), files.size());
    List<String> lines = Files.readAllLines(files.get(0));
    List<String> head = List.of(lines.get(0).split(",", -1));
    assertEquals(
        "object,site,time,azimuthDeg,elevationDeg,rangeKm,rangeRateKmS,dopplerHz,receiveHz,"
            + "transmitHz,sunlit",
        lines.get(0));
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = List.of(line.split(",", -1));
      double rate = Double.parseDouble(cells.get(head.indexOf("rangeRateKmS"))) / 299_792.458;
      double receive = Double.parseDouble(cells.get(head.indexOf("receiveHz")));
      double doppler = Double.parseDouble(cells.get(head.indexOf("dopplerHz")));
      assertEquals(436.73e6 + doppler, receive, 0.1);
      // what is sent arrives at the nominal frequency: low while it comes nearer
      double transmit = Double.parseDouble(cells.get(head.indexOf("transmitHz")));
      assertEquals(145.9e6, transmit * (1 - rate), 0.1);
      assertEquals(rate < 0, transmit < 145.9e6);
    }
    assertEquals(
        ExitCode.BAD_INPUT,
        run(
                "track",
                demo.toString(),
                "--station",
                "Saltmere",
                "--object",
                "97312",
                "--days",
                "0.5",
                "--out",
                folder.toString())
            .code());
  }

  @Test
  void passesOfNeighboursAreOneEntryOfTheCalendar() {
    String text = done("passes", demo.toString(), "--format", "ics", "--days", "1");
    List<VEvent> events = Biweekly.parse(text).first().getEvents();
    assertTrue(events.size() >= 6 && events.size() <= 12, "" + events.size());
    VEvent first = events.get(0);
    assertEquals("Saltmere", first.getLocation().getValue());
    assertEquals("Saltmere, pass up to 33°", first.getSummary().getValue());
    assertTrue(first.getDescription().getValue().contains("97315: "));
    Instant from = first.getDateStart().getValue().toInstant();
    assertTrue(from.isAfter(Instant.parse("2026-10-13T09:12:00Z")));
    assertTrue(from.isBefore(Instant.parse("2026-10-13T09:14:00Z")));
    assertFalse(first.getStatus().isConfirmed());
  }

  @Test
  void plannedWindowsCarryWhatIsToBeDone() {
    String text = done("passes", demo.toString(), "--format", "ics", "--planned");
    List<VEvent> events = Biweekly.parse(text).first().getEvents();
    assertTrue(events.size() > 3, text);
    for (VEvent event : events) {
      assertTrue(event.getStatus().isConfirmed());
      assertTrue(
          event.getSummary().getValue().matches("(Saltmere|Cinderholm): .* \\(pass up to .*"));
      assertFalse(event.getDescription().getValue().isBlank());
    }
    assertEquals(ExitCode.BAD_INPUT, run("passes", demo.toString(), "--planned").code());
  }
}
