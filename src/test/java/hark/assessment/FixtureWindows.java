package hark.assessment;

import hark.assessment.Assessment.Choice;
import hark.assessment.Assessment.Geometry;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Plan;
import hark.assessment.Assessment.ProcedureView;
import hark.assessment.Assessment.Window;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Windows, options, plan and procedures of the invented assessment. */
public final class FixtureWindows {
  private FixtureWindows() {}

  /** Six windows over three days; two are recorded by the unattended station. */
  public static List<Window> windows() {
    return List.of(
        window("Fen Hill", "2026-11-14T10:42:20Z", 548, 63, 0.41, 0.17, listenWide()),
        window("Quay", "2026-11-14T12:18:05Z", 402, 22, 0.38, 0.06, record()),
        window("Fen Hill", "2026-11-14T21:10:05Z", 511, 48, 0.36, 0.13, listenWide()),
        window("Quay", "2026-11-15T08:41:44Z", 590, 84, 0.47, 0.21, record()),
        window("Fen Hill", "2026-11-15T10:20:00Z", 300, 12, 0.40, 0.02, Optional.empty()),
        window("Fen Hill", "2026-11-16T20:01:30Z", 530, 55, 0.44, 0.15, Optional.of("low-power")));
  }

  static Plan plan() {
    return new Plan(
        List.of(
            new Choice("Fen Hill 2026-11-14T10:42:20Z", "listen-wide"),
            new Choice("Quay 2026-11-14T12:18:05Z", "listen"),
            new Choice("Fen Hill 2026-11-14T21:10:05Z", "listen-wide"),
            new Choice("Quay 2026-11-15T08:41:44Z", "listen"),
            new Choice("Fen Hill 2026-11-16T20:01:30Z", "low-power")),
        3.4,
        0.37,
        0.45,
        1.9);
  }

  static List<ProcedureView> procedures() {
    return List.of(
        procedure("listen", "listen as planned", "listen"),
        procedure("listen-wide", "listen wide", "listen"),
        procedure("wait", "send nothing and let it charge", "wait"),
        new ProcedureView(
            "reset",
            "blind reset",
            "command",
            List.of("Transmit only under a licence that covers band, place and time."),
            List.of("the battery may be charging towards recovery"),
            transmitText("reset")),
        new ProcedureView(
            "low-power",
            "blind low-power mode",
            "command",
            List.of("Transmit only under a licence that covers band, place and time."),
            List.of(),
            transmitText("low-power mode")));
  }

  /** A window with the usual options; {@code planned} also comes first in rank. */
  public static Window window(
      String station,
      String aos,
      long seconds,
      double elevationDeg,
      double beaconOn,
      double heard,
      Optional<String> planned) {
    Instant start = Instant.parse(aos);
    Instant middle = start.plusSeconds(seconds / 2);
    Instant end = start.plusSeconds(seconds);
    List<Geometry> geometry =
        List.of(
            new Geometry("98101", start, middle, end, elevationDeg, 204, 121, 31, 640, true),
            new Geometry(
                "98102",
                start.plusSeconds(75),
                middle.plusSeconds(76),
                end.plusSeconds(78),
                elevationDeg - 4,
                203,
                121,
                30,
                665,
                true));
    boolean unattended = station.equals("Quay");
    return new Window(
        station + " " + aos,
        station,
        start,
        middle,
        end,
        elevationDeg,
        geometry,
        beaconOn,
        0.02,
        0.12,
        0.31,
        0.55,
        38,
        unattended,
        planned,
        unattended ? listening(heard) : sending(heard, planned.orElse("listen-wide")),
        Optional.empty());
  }

  /** An option by its parts that matter to a sentence. */
  public static Option option(
      String procedure,
      String title,
      double heard,
      double hours,
      double hazard,
      Optional<Double> reach,
      int rank,
      String why) {
    double byHorizon = Math.min(1, 0.3 + heard / 3);
    return new Option(
        procedure, title, heard, heard / 15, byHorizon, heard / 2, hours, hazard, reach, rank, why);
  }

  private static List<Option> listening(double heard) {
    return List.of(
        option(
            "listen",
            "listen as planned",
            heard,
            0.05,
            0,
            Optional.empty(),
            1,
            "It records by itself."),
        option(
            "wait",
            "send nothing and let it charge",
            0,
            0,
            0,
            Optional.empty(),
            2,
            "It costs nothing."));
  }

  private static List<Option> sending(double heard, String best) {
    boolean commandFirst = best.equals("low-power");
    return List.of(
        option(
            "listen-wide",
            "listen wide",
            heard,
            0.7,
            0,
            Optional.empty(),
            commandFirst ? 2 : 1,
            "A third of what is still audible lies outside the usual band."),
        option(
            "low-power",
            "blind low-power mode",
            heard * 0.9,
            0.9,
            commandFirst ? 0.01 : 0.04,
            Optional.of(0.30),
            commandFirst ? 1 : 2,
            "Three in ten would take it, and most of those would charge again."),
        option(
            "listen",
            "listen as planned",
            heard * 0.7,
            0.7,
            0,
            Optional.empty(),
            3,
            "The usual band holds two thirds of what is audible."),
        option(
            "wait",
            "send nothing and let it charge",
            0,
            0,
            0,
            Optional.empty(),
            4,
            "It costs nothing."),
        option(
            "reset",
            "blind reset",
            heard * 0.8,
            0.9,
            0.22,
            Optional.of(0.40),
            5,
            "A reset could reach four in ten, and in most of those it delays the first sound."));
  }

  private static Optional<String> listenWide() {
    return Optional.of("listen-wide");
  }

  private static Optional<String> record() {
    return Optional.of("listen");
  }

  private static ProcedureView procedure(String id, String title, String kind) {
    return new ProcedureView(
        id, title, kind, List.of(), List.of(), "## Steps\n\n1. " + title + " from AOS to LOS.\n");
  }

  private static String transmitText(String what) {
    return "## Steps\n\n1. Listen first.\n2. Send " + what + " three times.\n3. Listen to LOS.\n";
  }
}
