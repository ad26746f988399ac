package hark.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.EarthModel;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveFilesTest {
  private static final CurveFiles.Setting NAMED = setting("North");
  private static final CurveFiles.Setting UNNAMED = setting("");

  /**
   * The layout of CCSDS 503.0-B's examples of one-way receive frequencies, with numbers of ours.
   */
  private static final String KVN =
      """
      CCSDS_TDM_VERS = 2.0
      CREATION_DATE = 2026-10-07T10:00:00
      ORIGINATOR = NORTH
      META_START
      TIME_SYSTEM = UTC
      PARTICIPANT_1 = CORNCRAKE
      PARTICIPANT_2 = North
      MODE = SEQUENTIAL
      PATH = 1,2
      FREQ_OFFSET = 437000000.0
      META_STOP
      DATA_START
      RECEIVE_FREQ_2 = 2026-10-07T09:31:20.500 8123.5
      RECEIVE_FREQ_2 = 2026-10-07T09:31:50.500 8011.25
      DATA_STOP
      """;

  private static final String XML =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <tdm id="CCSDS_TDM_VERS" version="2.0">
        <header><CREATION_DATE>2026-10-07T10:00:00</CREATION_DATE><ORIGINATOR>N</ORIGINATOR></header>
        <body><segment>
          <metadata>
            <TIME_SYSTEM>UTC</TIME_SYSTEM>
            <PARTICIPANT_1>CORNCRAKE</PARTICIPANT_1>
            <PARTICIPANT_2>North</PARTICIPANT_2>
            <MODE>SEQUENTIAL</MODE>
            <PATH>1,2</PATH>
          </metadata>
          <data>
            <observation><EPOCH>2026-10-07T09:31:20.5</EPOCH>
              <RECEIVE_FREQ_2>437008123.5</RECEIVE_FREQ_2></observation>
          </data>
        </segment></body>
      </tdm>
      """;

  private static CurveFiles.Setting setting(String station) {
    return new CurveFiles.Setting(List.of("North", "South"), station, 437e6, EarthModel.bundled());
  }

  private static BadInput refused(String text, CurveFiles.Setting setting) {
    return assertThrows(BadInput.class, () -> CurveFiles.parse("curve", text, setting));
  }

  @Test
  void trackingDataInKeysAndValuesAreRead() {
    DopplerCurve curve = CurveFiles.parse("curve.tdm", KVN, UNNAMED).get(0);
    assertEquals("North", curve.station());
    assertEquals(437_008_123.5, curve.points().get(0).frequencyHz(), 1e-6);
    assertEquals(Instant.parse("2026-10-07T09:31:50.5Z"), curve.points().get(1).time());
  }

  @Test
  void trackingDataInXmlAreRead() {
    DopplerCurve curve = CurveFiles.parse("curve.xml", XML, UNNAMED).get(0);
    assertEquals("North", curve.station());
    assertEquals(
        new DopplerPoint(Instant.parse("2026-10-07T09:31:20.5Z"), 437_008_123.5, Double.NaN),
        curve.points().get(0));
  }

  @Test
  void commaSeparatedValuesAreReadAndPartedIntoPasses() {
    String text =
        """
        # measured by hand
        time, frequencyHz, sigmaHz
        2026-10-07T09:31:20Z, 437008123.5, 40
        2026-10-07T11:05:00Z, 437007000,
        """;
    List<DopplerCurve> curves = CurveFiles.parse("curve.csv", text, NAMED);
    assertEquals(2, curves.size());
    assertEquals(40, curves.get(0).points().get(0).sigmaHz());
    assertTrue(Double.isNaN(curves.get(1).points().get(0).sigmaHz()));
  }

  @Test
  void allProblemsOfAFileComeAtOnce() {
    String text =
        """
        time,frequencyHz
        yesterday,437008123
        2026-10-07T09:31:20Z,loud
        2026-10-07T09:31:20Z
        """;
    assertEquals(3, refused(text, NAMED).problems().size());
  }

  @ParameterizedTest
  @CsvSource({"437008.1, kHz", "437.0081, MHz", "8123.5, offset", "145900000, received frequency"})
  void aFrequencyInTheWrongUnitIsSuspectedAndTold(String number, String word) {
    String text = "time,frequencyHz\n2026-10-07T09:31:20Z," + number + "\n";
    String mend = refused(text, NAMED).problems().get(0).mend();
    assertTrue(mend.contains(word), mend);
  }

  @Test
  void aFileOfNoKnownStationSaysWhichThereAre() {
    assertTrue(refused("time,frequencyHz\n", UNNAMED).getMessage().contains("--station"));
    String other = KVN.replace("= North", "= West");
    assertTrue(refused(other, UNNAMED).getMessage().contains("North, South"));
    assertEquals("South", CurveFiles.parse("curve", other, setting("South")).get(0).station());
  }

  @Test
  void trackingDataWithoutParticipantsAreRefusedInWords() {
    String none = KVN.replaceAll("PARTICIPANT_. = .*\n", "");
    BadInput bad = refused(none, NAMED);
    assertTrue(
        bad.getMessage().toLowerCase(java.util.Locale.ROOT).contains("participant"),
        bad.getMessage());
  }

  @Test
  void mixedTimeSystemsAreRefused() {
    String second = KVN.substring(KVN.indexOf("META_START")).replace("= UTC", "= TAI");
    assertTrue(refused(KVN + second, NAMED).getMessage().contains("time systems"));
  }

  @Test
  void aDocumentTypeIsRefusedUnread() {
    String evil =
        XML.replace("<tdm id", "<!DOCTYPE tdm [<!ENTITY x SYSTEM \"file:///x\">]><tdm id");
    assertTrue(refused(evil, NAMED).getMessage().contains("document type"));
  }
}
