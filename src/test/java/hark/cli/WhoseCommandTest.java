package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.evidence.DopplerFit;
import hark.evidence.Entry;
import hark.journal.Journal;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Trajectory;
import hark.station.Looks;
import hark.station.Site;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's candidates against curves computed for one of them. */
class WhoseCommandTest {
  private static final Instant START = Instant.parse("2026-10-12T20:59:00Z");
  private static final Site SALTMERE = new Site("Saltmere", 51.42, 4.87, 8);

  @TempDir private Path temp;
  private Path demo;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeDemo() {
    demo = temp.resolve("demo");
    DemoMission.writeTo(demo);
  }

  private int run(String... args) {
    return Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
  }

  /** A curve of an object that runs late, one point each 20 s while it is up. */
  private Path curve(String object, double late, double carrierErrorHz) throws Exception {
    List<ElementSet> sets =
        ElementSets.parse("sets", Files.readString(demo.resolve("orbit/launch-731.tle")));
    ElementSet set =
        ElementSets.inForce(sets, START).stream()
            .filter(each -> each.objectId().equals(object))
            .findFirst()
            .orElseThrow();
    Trajectory trajectory = Trajectory.of(set, EarthModel.bundled());
    StringBuilder text = new StringBuilder("time,frequencyHz,sigmaHz\n");
    for (int i = 0; i < 360; i++) {
      Instant at = START.plusSeconds(20L * i);
      var look = Looks.late(trajectory, SALTMERE, trajectory.secondsAt(at), late);
      if (look.elevationDeg() > 5) {
        double sent = 436.73e6 + carrierErrorHz;
        double wobble = 30 * Math.sin(7.0 * i);
        double hertz = sent * (1 - look.rangeRateMetersPerSecond() / 299_792_458) + wobble;
        text.append(at).append(',').append(hertz).append(",60\n");
      }
    }
    return Files.writeString(temp.resolve("curve-" + object + ".csv"), text);
  }

  @Test
  void theDemosOwnCurveRulesOutTheFavouredNeighbour() throws Exception {
    for (String file : List.of("first-contact.csv", "first-contact.tdm")) {
      out.getBuffer().setLength(0);
      String curve = demo.resolve("recordings").resolve(file).toString();
      assertEquals(
          ExitCode.DONE, run("whose", demo.toString(), curve, "--format", "json"), err.toString());
      JsonNode json = new ObjectMapper().readTree(out.toString());
      assertEquals("found", json.get("verdict").asText());
      JsonNode favoured = json.get("candidates").get(0);
      assertEquals("97311", favoured.get("object").asText());
      assertEquals(0.45, favoured.get("prior").asDouble(), 1e-9);
      assertTrue(favoured.get("posterior").asDouble() < 0.001, favoured.toString());
      JsonNode truth = json.get("candidates").get(1);
      assertEquals("97312", truth.get("object").asText());
      assertTrue(truth.get("posterior").asDouble() > 0.95, truth.toString());
      // simulated 0.6 s late by a clock 0.15 s ahead, 240 Hz over the nominal
      double miss = truth.get("timeOffsetS").asDouble() - 0.75;
      assertTrue(Math.abs(miss) < 3 * truth.get("timeOffsetSd").asDouble(), truth.toString());
    }
  }

  @Test
  void theWordsSayWhoItIsAndWhoIsRuledOut() throws Exception {
    run("whose", demo.toString(), demo.resolve("recordings/first-contact.csv").toString());
    String first = out.toString().replaceAll("\\s+", " ");
    assertTrue(first.startsWith("Object 97312: 99 %"), first);
    assertTrue(first.contains("Object 97311, which had 45 %, is ruled out."), first);
  }

  @Test
  void startAndEndOfContactsAloneWeighALittle() throws Exception {
    assertEquals(
        ExitCode.DONE,
        run("whose", demo.toString(), "--times", "--format", "json"),
        err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    double sum = json.get("none").asDouble();
    for (JsonNode candidate : json.get("candidates")) {
      sum += candidate.get("posterior").asDouble();
    }
    assertEquals(1, sum, 1e-5);
    // all four were up both times, so nobody is ruled out and nobody found
    assertTrue(json.get("candidates").get(0).get("posterior").asDouble() < 0.8);
    assertTrue(json.get("candidates").get(3).get("posterior").asDouble() > 0.02);
    assertEquals(ExitCode.BAD_INPUT, run("whose", demo.toString()));
    assertTrue(err.toString().contains("Which curves?"), err.toString());
  }

  @Test
  void anObjectFarFromItsElementsIsNoneOfTheCandidates() throws Exception {
    String curve = curve("97311", 60, 200).toString();
    int code = run("whose", demo.toString(), curve, "--station", "Saltmere", "--format", "json");
    assertEquals(ExitCode.DONE, code, err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals(4, json.get("candidates").size());
    assertTrue(json.get("none").asDouble() > 0.95, json.toString());
    double sum = json.get("none").asDouble();
    for (JsonNode candidate : json.get("candidates")) {
      sum += candidate.get("posterior").asDouble();
      assertTrue(candidate.get("frequencyHz").size() >= 1);
    }
    assertEquals(1, sum, 1e-5);
  }

  @Test
  void whatCannotBeToldIsNotRefinedAndNotLogged() throws Exception {
    // late by 3.6 spreads of its elements: as good as none of the candidates
    String curve = curve("97311", 5.4, 0).toString();
    String base = temp.resolve("new").toString();
    int code =
        run("whose", demo.toString(), curve, "--station", "Saltmere", "--refine", base, "--log");
    assertEquals(ExitCode.COULD_NOT, code);
    assertTrue(out.toString().startsWith("Cannot tell yet."), out.toString());
    assertTrue(err.toString().contains("not refined, not logged"), err.toString());
    assertFalse(Files.exists(temp.resolve("new.omm")));
  }

  @Test
  void theCurvesAreDrawnWithTheirDifferences() throws Exception {
    String curve = curve("97311", 1, 0).toString();
    Path plot = temp.resolve("whose.svg");
    run("whose", demo.toString(), curve, "--station", "Saltmere", "--plot", plot.toString());
    String svg = Files.readString(plot);
    assertTrue(svg.contains("97311") && svg.contains("misses, Hz"));
    assertTrue(svg.chars().filter(c -> c == '\n').count() > 20);
  }

  @Test
  void aCurveOutsideEveryPassNamesTheNearest() throws Exception {
    Path curve = temp.resolve("night.csv");
    Files.writeString(curve, "time,frequencyHz\n2026-10-12T04:00:00Z,436731000\n");
    int code = run("whose", demo.toString(), curve.toString(), "--station", "Saltmere");
    assertEquals(ExitCode.BAD_INPUT, code);
    assertTrue(err.toString().contains("the nearest pass is of 973"), err.toString());
  }

  @Test
  void twoStationsAndNoNameIsRefusedWithTheOption() throws Exception {
    assertEquals(
        ExitCode.BAD_INPUT, run("whose", demo.toString(), curve("97311", 0, 0).toString()));
    assertTrue(err.toString().contains("--station"), err.toString());
  }

  @Test
  void whatIsFoundGoesIntoTheJournalAndRefinedElementsIntoFiles() throws Exception {
    String curve = curve("97312", 0.5, 150).toString();
    String base = temp.resolve("refined").toString();
    int code =
        run("whose", demo.toString(), curve, "--station", "Saltmere", "--refine", base, "--log");
    assertEquals(ExitCode.DONE, code, err.toString());
    assertTrue(out.toString().startsWith("Object 97312"), out.toString());
    List<Entry> entries = Journal.read(demo.resolve("journal.db"));
    DopplerFit logged = (DopplerFit) entries.get(entries.size() - 1).evidence();
    assertEquals("97312", logged.object());
    for (String form : List.of(".omm", ".tle")) {
      ElementSet again = ElementSets.parse(form, Files.readString(Path.of(base + form))).get(0);
      assertEquals("97312", again.objectId());
    }
  }
}
