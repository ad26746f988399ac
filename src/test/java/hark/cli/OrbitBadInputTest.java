package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said, word by word, of curves and orbits that cannot be used. */
class OrbitBadInputTest {
  private static final String OEM =
      """
      CCSDS_OEM_VERS = 2.0
      CREATION_DATE = 2026-10-06T04:00:00
      ORIGINATOR = DEPLOYER
      META_START
      OBJECT_NAME = CORNCRAKE
      OBJECT_ID = 2026-731Z
      CENTER_NAME = EARTH
      REF_FRAME = ICRF
      TIME_SYSTEM = UTC
      START_TIME = 2026-10-06T04:26:00
      STOP_TIME = 2026-10-06T04:26:00
      META_STOP
      2026-10-06T04:26:00 6878.0 0 0 0 -0.9786 7.5407
      """;

  @TempDir private Path temp;
  private Path demo;

  @BeforeEach
  void writeDemo() {
    demo = temp.resolve("demo");
    DemoMission.writeTo(demo);
  }

  private String recording(String name) throws IOException {
    return Files.readString(demo.resolve("recordings").resolve(name));
  }

  /** What is said of a file with such a text, its path written as FILE. */
  private List<String> said(String text, String... command) throws IOException {
    Path file = Files.writeString(temp.resolve("given"), text);
    String[] args = new String[command.length];
    for (int i = 0; i < args.length; i++) {
      args[i] = command[i].replace("FILE", file.toString()).replace("DEMO", demo.toString());
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
    assertEquals(ExitCode.BAD_INPUT, code);
    assertEquals("", out.toString());
    return err.toString().replace(file.toString(), "FILE").lines().toList();
  }

  private List<String> curve(String text) throws IOException {
    return said(text, "whose", "DEMO", "FILE");
  }

  private List<String> elements(String text) throws IOException {
    return said(text, "passes", "--elements", "FILE", "--site", "51.42,4.87,8");
  }

  @Test
  void trackingDataWithoutParticipants() throws IOException {
    assertEquals(
        List.of(
            "FILE: the message does not name its participants · name the spacecraft and the station"
                + " as PARTICIPANT_1 and PARTICIPANT_2"),
        curve(recording("first-contact.tdm").replaceAll("PARTICIPANT_. = .*\n", "")));
  }

  @Test
  void aCurveOutsideOfEveryPassNamesTheNearest() throws IOException {
    assertEquals(
        List.of(
            "FILE: no candidate was over Saltmere at 2026-10-08T09:43:10.750Z · check times and"
                + " station; the nearest pass is of 97315, 2026-10-08T09:04:32Z to"
                + " 2026-10-08T09:15:25Z"),
        curve(recording("first-contact.csv").replace("2026-10-06T", "2026-10-08T")));
  }

  @Test
  void mixedTimeSystems() throws IOException {
    String one = recording("first-contact.tdm");
    String two = one.substring(one.indexOf("META_START")).replace("= UTC", "= GPS");
    assertEquals(
        List.of(
            "FILE: the segments use different time systems: GPS, UTC · write all of them in UTC"),
        curve(one + two));
  }

  @Test
  void frequenciesInKilohertz() throws IOException {
    String text = "time,frequencyHz,station\n2026-10-06T09:43:10Z,436734.7,Saltmere\n";
    assertEquals(
        List.of(
            "FILE: its middle frequency is 436734.7 Hz, the beacon sends at 436730000 Hz · this looks"
                + " like kHz: multiply by 1000"),
        curve(text));
  }

  @Test
  void anElementMessageThatLacksAField() throws IOException {
    StringWriter out = new StringWriter();
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    Main.run(
        Clock.systemUTC(),
        new PrintWriter(out),
        nowhere,
        "orbit",
        demo.toString(),
        "--write",
        "omm");
    String lacking = out.toString().replaceFirst("MEAN_ANOMALY .*\n", "");
    assertEquals(
        List.of("FILE:1: MEAN_ANOMALY is missing · export the object again from the source"),
        elements(lacking));
  }

  @Test
  void aFrameThatNeedsDataThatIsNotHere() throws IOException {
    assertEquals(
        List.of(
            "FILE: its states are in frame ICRF, which needs data that is not here (no bodies of the"
                + " solar system are bundled) · ask for the states in GCRF, EME2000, TEME or ITRF,"
                + " about the Earth"),
        elements(OEM));
  }

  @Test
  void aRowOfOneState() throws IOException {
    assertEquals(
        List.of(
            "FILE: a row has 1 state(s), going between them takes 4 · ask for a longer row, or give one"
                + " state as an OPM"),
        elements(OEM.replace("ICRF", "EME2000")));
  }
}
