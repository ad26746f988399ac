package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** States read from messages, and what is refused in which words. */
class StateMessagesTest {
  private static final EarthModel EARTH = EarthModel.bundled();

  /** CCSDS 502.0-B-3, figure G-1 (an invented object), with an orbit that stays up. */
  static final String OPM =
      """
      CCSDS_OPM_VERS = 3.0
      CREATION_DATE = 2026-10-06T04:00:00
      ORIGINATOR = DEPLOYER
      OBJECT_NAME = CORNCRAKE
      OBJECT_ID = 2026-731Z
      CENTER_NAME = EARTH
      REF_FRAME = TEME
      TIME_SYSTEM = UTC
      EPOCH = 2026-10-06T04:26:00.500
      X = 6878.0
      Y = 0.0
      Z = 0.0
      X_DOT = 0.0
      Y_DOT = -0.9786
      Z_DOT = 7.5407
      MASS = 2.7
      DRAG_AREA = 0.028
      DRAG_COEFF = 2.2
      """;

  static ElementSet one(String text) {
    return ElementSets.parse("state.opm", text).get(0);
  }

  private static Problem refused(String text) {
    return assertThrows(BadInput.class, () -> ElementSets.parse("state.opm", text))
        .problems()
        .get(0);
  }

  @Test
  void aStateIsWhereTheMessageSays() {
    ElementSet set = one(OPM);
    assertEquals("2026-731Z", set.objectId());
    assertEquals(Instant.parse("2026-10-06T04:26:00.500Z"), set.epoch());
    State state = Trajectory.of(set, EARTH).temeAt(set.epoch()).orElseThrow();
    double oneMillimeter = 1e-3;
    assertEquals(6878e3, state.xMeters(), oneMillimeter);
    assertEquals(7540.7, state.vzMetersPerSecond(), 1e-6);
    assertTrue(set.isState());
  }

  @Test
  void theSameStateAsXmlIsTheSameSet() {
    String xml =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <opm id="CCSDS_OPM_VERS" version="3.0">
        <header><CREATION_DATE>2026-10-06T04:00:00</CREATION_DATE><ORIGINATOR>D</ORIGINATOR></header>
        <body><segment><metadata><OBJECT_NAME>CORNCRAKE</OBJECT_NAME><OBJECT_ID>2026-731Z</OBJECT_ID>
        <CENTER_NAME>EARTH</CENTER_NAME><REF_FRAME>TEME</REF_FRAME><TIME_SYSTEM>UTC</TIME_SYSTEM>
        </metadata><data><stateVector><EPOCH>2026-10-06T04:26:00.500</EPOCH>
        <X units="km">6878.0</X><Y units="km">0</Y><Z units="km">0</Z>
        <X_DOT units="km/s">0</X_DOT><Y_DOT units="km/s">-0.9786</Y_DOT>
        <Z_DOT units="km/s">7.5407</Z_DOT></stateVector>
        <spacecraftParameters><MASS>2.7</MASS><DRAG_AREA>0.028</DRAG_AREA>
        <DRAG_COEFF>2.2</DRAG_COEFF></spacecraftParameters></data></segment></body></opm>
        """;
    assertEquals(one(OPM), one(xml));
  }

  @Test
  void anEarthFixedStateComesBackEarthFixed() {
    // the example of CCSDS 502.0-B (figure 3-1, ITRF), read off its own numbers
    String fixed =
        OPM.replace("REF_FRAME = TEME", "REF_FRAME = ITRF2000")
            .replace("X = 6878.0", "X = 6503.514")
            .replace("Y = 0.0", "Y = 1239.647")
            .replace("Z = 0.0", "Z = -717.490")
            .replace("X_DOT = 0.0", "X_DOT = -0.873160")
            .replace("Y_DOT = -0.9786", "Y_DOT = 8.740420")
            .replace("Z_DOT = 7.5407", "Z_DOT = -4.191076");
    ElementSet set = one(fixed);
    State state = Trajectory.of(set, EARTH).earthFixedAt(set.epoch()).orElseThrow();
    // sidereal time of 1982 against the full chain of frames: a few metres
    double tenMeters = 10;
    assertEquals(6503514, state.xMeters(), tenMeters);
    assertEquals(1239647, state.yMeters(), tenMeters);
    assertEquals(-717490, state.zMeters(), tenMeters);
    assertEquals(8740.42, state.vyMetersPerSecond(), 0.02);
  }

  @Test
  void thePullInDoubtGrowsWithTheAirAndTheAreaOfTheBody() {
    double light = one(OPM).spread().orElseThrow().perDay2Seconds();
    String big = OPM.replace("DRAG_AREA = 0.028", "DRAG_AREA = 0.28");
    double heavy = one(big).spread().orElseThrow().perDay2Seconds();
    assertEquals(10, heavy / light, 0.5);
    assertTrue(light > 0.05 && light < 1, "s a day squared at 500 km: " + light);
  }

  @Test
  void aCovarianceSaysHowWellTheStateIsKnown() {
    StringBuilder matrix = new StringBuilder("COV_REF_FRAME = RTN\n");
    String[] names = {"X", "Y", "Z", "X_DOT", "Y_DOT", "Z_DOT"};
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j <= i; j++) {
        double value = i != j ? 0 : i < 3 ? 0.01 : 1e-8; // 100 m and 0.1 m/s
        matrix.append(String.format(Locale.ROOT, "C%s_%s = %.3e%n", names[i], names[j], value));
      }
    }
    StateSpread spread = one(OPM + matrix).spread().orElseThrow();
    assertEquals(100 / 7604.0, spread.initialSeconds(), 1e-4);
    // δa = √((2·100)² + (2·0.1/n)²), n = 7604/6878e3; 3/2 n δa each second
    double n = 7604.0 / 6878e3;
    double axis = Math.hypot(200, 0.2 / n);
    assertEquals(1.5 * n * axis * 86400 / 7604, spread.perDaySeconds(), 0.01);
  }

  private static String oem(double stepSeconds, int count) {
    ElementSet set = one(OPM);
    double[] start = {6878e3, 0, 0, 0, -978.6, 7540.7};
    List<double[]> rows =
        new StateForces(set.epoch(), EARTH)
            .rows(0, start, new DragBody(2.7, 0.028, 2.2, 1.5), stepSeconds, count);
    StringBuilder text = new StringBuilder();
    Instant last = set.epoch().plusMillis(Math.round(1000 * stepSeconds * (count - 1)));
    text.append("CCSDS_OEM_VERS = 2.0\nCREATION_DATE = 2026-10-06T04:00:00\nORIGINATOR = D\n")
        .append("META_START\nOBJECT_NAME = CORNCRAKE\nOBJECT_ID = 2026-731Z\n")
        .append("CENTER_NAME = EARTH\nREF_FRAME = TEME\nTIME_SYSTEM = UTC\n")
        .append("START_TIME = " + bare(set.epoch()) + "\nSTOP_TIME = " + bare(last) + "\n")
        .append("META_STOP\n");
    for (int i = 0; i < count; i++) {
      double[] s = rows.get(i);
      text.append(bare(set.epoch().plusMillis(Math.round(1000 * stepSeconds * i))));
      for (int k = 0; k < 6; k++) {
        text.append(String.format(Locale.ROOT, " %.9f", s[k] / 1000));
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static String bare(Instant time) {
    return time.toString().replace("Z", "");
  }

  @Test
  void aRowOfStatesIsFollowedBetweenThemAndGoesOnBehindThem() {
    ElementSet row = ElementSets.parse("row.oem", oem(240, 31)).get(0);
    Trajectory read = Trajectory.of(row, EARTH);
    Trajectory path = Trajectory.of(one(OPM), EARTH);
    double[] a = new double[6];
    double[] b = new double[6];
    double fiveMeters = 5;
    for (double t = 1; t < 7200; t += 97) {
      assertTrue(read.teme(t, a));
      path.teme(t, b);
      assertEquals(0, distance(a, b), fiveMeters, "at " + t);
    }
    // behind the row with a body nobody told of: 0.022 m²/kg in place of 0.0228
    read.teme(86400, a);
    path.teme(86400, b);
    double oneKilometer = 1000;
    assertEquals(0, distance(a, b), oneKilometer);
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  @Test
  void statesTooFarApartAreRefusedWithTheStepToAskFor() {
    Problem problem = refused(oem(3600, 5));
    assertEquals(
        "its states lie 3600 s apart after 2026-10-06T04:26:00.500Z; nothing is known in between",
        problem.what());
    assertEquals("ask for steps of 310 s at most, or give one state as an OPM", problem.mend());
  }

  @Test
  void aFrameThatNeedsDataIsNamedWithTheFramesThatDoNot() {
    Problem problem = refused(OPM.replace("REF_FRAME = TEME", "REF_FRAME = ICRF"));
    assertTrue(
        problem
            .what()
            .startsWith("its states are in frame ICRF, which needs data that is not here"),
        problem.what());
    assertEquals("state.opm", problem.where());
    assertEquals(
        "ask for the states in GCRF, EME2000, TEME or ITRF, about the Earth", problem.mend());
  }

  @Test
  void anotherCentreIsRefused() {
    Problem problem = refused(OPM.replace("CENTER_NAME = EARTH", "CENTER_NAME = MARS"));
    assertTrue(problem.what().contains("MARS") || problem.what().contains("Mars"), problem.what());
  }

  @Test
  void aStateThatLacksACoordinateIsRefused() {
    Problem problem = refused(OPM.replace("Y = 0.0\n", ""));
    assertTrue(problem.what().startsWith("this orbit message cannot be read: "), problem.what());
    assertEquals("compare it with CCSDS 502.0-B or export it again", problem.mend());
  }

  @Test
  void aManoeuvreIsNotFollowed() {
    String planned =
        """
        MAN_EPOCH_IGNITION = 2026-10-06T09:00:34.1
        MAN_DURATION = 10
        MAN_DELTA_MASS = -0.01
        MAN_REF_FRAME = RTN
        MAN_DV_1 = 0
        MAN_DV_2 = 0.001
        MAN_DV_3 = 0
        """;
    Problem problem = refused(OPM + planned);
    assertEquals("the message plans 1 manoeuvre(s), which are not followed", problem.what());
  }

  @Test
  void documentTypesAndDeepNestsAreRefused() {
    String entity = "<!DOCTYPE opm [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><opm>&a;</opm>";
    assertEquals("the message declares a document type, which is not read", refused(entity).what());
    String deep = "<opm>" + "<a>".repeat(40) + "</a>".repeat(40) + "</opm>";
    assertEquals("elements nest deeper than 20", refused(deep).what());
  }

  @Test
  void manyObjectsOfOneMessageAllComeBack() {
    List<ElementSet> sets =
        ElementSets.parse(
            "two.oem",
            oem(240, 31)
                + oem(240, 31)
                    .replace("2026-731Z", "2026-731Y")
                    .replaceFirst("(?s)^.*?META_START", "META_START"));
    assertEquals(
        List.of("2026-731Z", "2026-731Y"), sets.stream().map(ElementSet::objectId).toList());
  }
}
