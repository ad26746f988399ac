package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.orekit.data.DataSource;
import org.orekit.files.ccsds.ndm.ParserBuilder;
import org.orekit.files.ccsds.ndm.odm.oem.Oem;
import org.orekit.files.ccsds.ndm.odm.oem.OemSegment;
import org.orekit.files.ccsds.ndm.odm.omm.Omm;
import org.orekit.files.ccsds.ndm.odm.omm.OmmData;
import org.orekit.utils.TimeStampedPVCoordinates;

/** Every form that is written is read back: by Hark, and by a general library. */
class ElementOutTest {
  private static final EarthModel EARTH = EarthModel.bundled();
  private static final Instant NOW = Instant.parse("2026-10-13T08:02:00Z");

  private static final List<ElementSet> SETS =
      List.of(
          named(
              "97311",
              "1 97311U 26731B   26280.58472222  .00000600  00000-0  14000-3 0    30",
              "2 97311  97.4100 180.0000 0011300  74.2000 305.0000 15.19210000   211"),
          named(
              "123456789",
              "1 97312U 26731C   26280.61250000  .00000600  00000-0  16000-3 0    35",
              "2 97312  97.4088 180.0294 0011600  78.2000  92.5427 15.19174833   213"));

  private static ElementSet named(String id, String one, String two) {
    ElementSet set = ElementSets.ofLines(one, two).named(id);
    return set;
  }

  private static ParserBuilder builder() {
    return new ParserBuilder(new MessageContext(EARTH)).withMu(OrbitShape.MU);
  }

  private static DataSource source(String text) {
    return new DataSource("text", () -> new StringReader(text));
  }

  /** Written without a name, an object's name is its number. */
  private static void same(List<ElementSet> expected, List<ElementSet> found) {
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < expected.size(); i++) {
      ElementSet a = expected.get(i);
      ElementSet b = found.get(i);
      assertEquals(a.objectId(), b.objectId());
      assertEquals(Optional.of(a.objectId()), b.name());
      assertTrue(Math.abs(Trajectory.between(a.epoch(), b.epoch())) < 1e-6);
      assertEquals(a.meanMotionRevPerDay(), b.meanMotionRevPerDay(), 0);
      assertEquals(a.meanAnomalyDeg(), b.meanAnomalyDeg(), 0);
      assertEquals(a.bstar(), b.bstar(), 0);
      assertEquals(a.halfMeanMotionDot(), b.halfMeanMotionDot(), 0);
    }
  }

  @Test
  void linesXmlAndJsonComeBackWhole() {
    same(SETS, ElementSets.parse("a", OmmText.lines(SETS, NOW)));
    same(SETS, ElementSets.parse("a", OmmText.xml(SETS, NOW)));
    same(SETS, ElementSets.parse("a", OmmText.json(SETS, NOW)));
  }

  @Test
  void aLibraryReadsTheSameFromXml() {
    List<Omm> messages = new ArrayList<>();
    builder()
        .buildNdmParser()
        .parseMessage(source(OmmText.xml(SETS, NOW)))
        .getConstituents()
        .forEach(each -> messages.add((Omm) each));
    assertEquals(2, messages.size());
    OmmData first = messages.get(0).getData();
    assertEquals(305, Math.toDegrees(first.getKeplerianElementsBlock().getAnomaly()), 1e-9);
    assertEquals(1.4e-4, first.getTLEBlock().getBStar(), 1e-12);
    assertEquals(123456789, messages.get(1).getData().getTLEBlock().getNoradID());
  }

  @Test
  void aNameWithSignsOfItsOwnSurvivesXml() {
    ElementSet set = SETS.get(0);
    String text =
        OmmText.xml(List.of(set), NOW)
            .replace(">97311</OBJECT_NAME", ">A&amp;B &lt;1</OBJECT_NAME");
    ElementSet read = ElementSets.parse("a", text).get(0);
    assertEquals(Optional.of("A&B <1"), read.name());
    assertEquals(read, ElementSets.parse("a", OmmText.xml(List.of(read), NOW)).get(0));
  }

  @Test
  void anEphemerisComesBackInALibraryAndHere() {
    Trajectory path = Trajectory.of(SETS.get(0), EARTH);
    List<EphemerisText.Row> rows = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      Instant time = NOW.plusSeconds(120L * i);
      rows.add(new EphemerisText.Row(time, path.temeAt(time).orElseThrow()));
    }
    String text =
        EphemerisText.oem(
            List.of(
                new EphemerisText.Segment("97311", "A", "TEME", rows),
                new EphemerisText.Segment("97312", "B", "ITRF2020", rows)),
            NOW);
    Oem oem = builder().buildOemParser().parseMessage(source(text));
    assertEquals(2, oem.getSegments().size());
    OemSegment segment = oem.getSegments().get(0);
    assertEquals(EARTH.teme(), segment.getFrame());
    for (int i = 0; i < rows.size(); i++) {
      TimeStampedPVCoordinates read = segment.getCoordinates().get(i);
      assertEquals(rows.get(i).time(), read.getDate().toInstant(EARTH.scales()));
      double halfAMillimeter = 0.51e-3;
      assertEquals(rows.get(i).state().xMeters(), read.getPosition().getX(), halfAMillimeter);
      assertEquals(rows.get(i).state().vyMetersPerSecond(), read.getVelocity().getY(), 1e-6);
    }
    ElementSet again = ElementSets.parse("a", text).get(0);
    State state = Trajectory.of(again, EARTH).temeAt(NOW.plusSeconds(1800)).orElseThrow();
    double oneMeter = 1;
    assertEquals(
        path.temeAt(NOW.plusSeconds(1800)).orElseThrow().zMeters(), state.zMeters(), oneMeter);
  }

  @Test
  void twoLinesOfAStateAreItsFittedElements() {
    ElementSet state = StateMessagesTest.one(StateMessagesTest.OPM).named("98001");
    ElementSet read = ElementSets.parse("a", ElementText.twoLines(state)).get(0);
    double[] a = new double[6];
    double[] b = new double[6];
    Trajectory.of(state, EARTH).teme(86400, a);
    Trajectory.of(read, EARTH).teme(86400, b);
    double threeKilometers = 3000;
    assertEquals(0, Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]), threeKilometers);
  }
}
