package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Geometry;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import hark.document.MissionFacts.Elements;
import hark.ensemble.BeaconRadio;
import hark.station.Station;
import hark.station.Station.Licence;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The pass plan inside a runbook entry, one section for each planned window; and one alone. */
final class PassPlan {
  /** Planned windows written out. */
  private static final int MOST = 6;

  /** Hypotheses named as tested by a pass. */
  private static final int TESTED = 3;

  private static final double HERTZ_IN_MEGAHERTZ = 1e6;

  private PassPlan() {}

  static void write(Markdown out, Assessment assessment, MissionFacts facts) {
    out.heading(2, "Pass plan");
    List<Window> planned = Options.planned(assessment);
    if (planned.isEmpty()) {
      out.paragraph("Nothing is planned in the next " + Words.days(assessment.horizonDays()) + ".");
    }
    for (Window window : planned.stream().limit(MOST).toList()) {
      out.heading(3, Words.dayAndMinute(window.aos()) + ", " + Markdown.plain(window.station()));
      window(out, assessment, facts, window, Options.planned(window).orElseThrow());
    }
    if (planned.size() > MOST) {
      out.paragraph("And " + (planned.size() - MOST) + " more after that.");
    }
  }

  /** Everything known of a window beforehand, as a table. */
  static void window(
      Markdown out, Assessment assessment, MissionFacts facts, Window window, Option option) {
    out.header("Field", "Value");
    out.field("Pass", Markdown.plain(window.id()));
    out.field(
        "AOS, culmination, LOS",
        Words.clock(window.aos())
            + ", "
            + Words.clock(window.culmination())
            + ", "
            + Words.clock(window.los()));
    window.geometry().forEach(g -> out.field(Markdown.plain(g.object()), geometry(facts, g)));
    out.field("Sunlight", Light.light(window.minutesSinceSunrise()));
    out.field(
        "Battery, middle half",
        Words.hundredths(window.socP25()) + "–" + Words.hundredths(window.socP75()) + " %");
    out.field("Beacon on", Words.percent(window.beaconOn(), window.beaconOnError()));
    out.field("Do", Markdown.plain(Words.sentenceCase(option.title())));
    out.field("Tests", tests(assessment, window));
    out.field("Why", Markdown.plain(option.why()));
    out.field(
        "Heard in this pass", Words.percent(option.heardThisPass(), option.heardThisPassError()));
    out.field("Listen to", listening(facts, window));
    out.field("Transmit", transmit(assessment, facts, window, option));
    out.field("Stop", stop(assessment, option));
    out.field("Station check", "a satellite known to send, before and after");
    out.field("Recording file", file(assessment, window));
    out.field("Who", window.unattended() ? "nobody: it records by itself" : RunbookEntry.TO_FILL);
    out.end();
  }

  /** The hypotheses under which the satellite may be audible by then without any help. */
  private static String tests(Assessment assessment, Window window) {
    List<String> audible =
        assessment.causes().stream()
            .filter(c -> c.selfRecovery().p10().filter(t -> !t.isAfter(window.los())).isPresent())
            .sorted(Comparator.comparingDouble(CauseView::posterior).reversed())
            .limit(TESTED)
            .map(c -> Markdown.plain(Words.inSentence(c.title())))
            .toList();
    return audible.isEmpty()
        ? "no hypothesis has as much as a tenth of its cases audible by then"
        : "it may be audible by then with " + Words.choice(audible);
  }

  /** A name to record under. */
  private static String file(Assessment assessment, Window window) {
    String name =
        RunbookEntry.slug(assessment.mission()) + "-" + RunbookEntry.slug(window.station());
    return "`" + name + "-" + RunbookEntry.stamp(window.aos()) + "`";
  }

  private static String geometry(MissionFacts facts, Geometry pass) {
    String shape =
        String.format(
            Locale.ROOT,
            "rises %s at azimuth %.0f°, highest %.0f° at azimuth %.0f° and %.0f km, sets %s at %.0f°",
            Words.clock(pass.aos()),
            pass.aosAzimuthDeg(),
            pass.maxElevationDeg(),
            pass.culminationAzimuthDeg(),
            pass.culminationRangeKm(),
            Words.clock(pass.los()),
            pass.losAzimuthDeg());
    String light = pass.sunlitAtCulmination() ? ", sunlit" : ", in shadow";
    return shape + light + facts.elements(pass.object(), pass.aos()).map(PassPlan::age).orElse("");
  }

  private static String age(Elements elements) {
    return String.format(
        Locale.ROOT,
        "; elements of %s, %s old, so ± %s s (1 σ)",
        Words.yearAndMinute(elements.set().epoch()),
        Words.days(Math.max(0, elements.ageDays())),
        Words.decimal(elements.alongTrackSdSeconds(), 1));
  }

  private static String listening(MissionFacts facts, Window window) {
    String beacons =
        facts.beacons().stream().map(PassPlan::beacon).collect(Collectors.joining("; "));
    return facts
        .station(window.station())
        .map(
            s ->
                beacons
                    + "; this station hears ± "
                    + Words.decimal(s.receive().tuningHz() / 1000, 1)
                    + " kHz, "
                    + s.receive().polarisation().name().toLowerCase(Locale.ROOT))
        .orElse(beacons);
  }

  private static String beacon(BeaconRadio beacon) {
    return Markdown.plain(beacon.name())
        + " at "
        + megahertz(beacon.frequencyHz())
        + ", "
        + beacon.form().name().toLowerCase(Locale.ROOT)
        + ", "
        + beacon.polarisation().name().toLowerCase(Locale.ROOT);
  }

  private static String megahertz(double hertz) {
    return Words.decimal(hertz / HERTZ_IN_MEGAHERTZ, 4) + " MHz";
  }

  private static String transmit(
      Assessment assessment, MissionFacts facts, Window window, Option option) {
    if (!Options.isCommand(assessment, option)) {
      return "no";
    }
    String command =
        Markdown.plain(option.title()) + " at " + megahertz(facts.receiver().frequencyHz());
    return facts
            .station(window.station())
            .flatMap(Station::transmit)
            .map(t -> command + ", " + Words.decimal(t.powerWatts(), 1) + " W; ")
            .orElse(command + "; ")
        + licence(facts, window.station())
        + "; "
        + Markdown.plain(Sending.harm(option));
  }

  /** Whose licence it is and who may authorise; or that the station only listens. */
  static String licence(MissionFacts facts, String station) {
    Optional<Licence> licence =
        facts.station(station).flatMap(Station::transmit).map(Station.Transmit::licence);
    return licence.map(PassPlan::licence).orElse("this station only listens");
  }

  private static String licence(Licence licence) {
    String bands =
        licence.bandsMhz().stream()
            .map(b -> Words.decimal(b[0], 4) + "–" + Words.decimal(b[1], 4) + " MHz")
            .collect(Collectors.joining(", "));
    return "licence of "
        + Markdown.plain(licence.holder())
        + " for "
        + bands
        + licence.until().map(t -> " until " + Words.yearAndMinute(t)).orElse("")
        + ", to be authorised by "
        + Markdown.plain(Words.choice(licence.mayAuthorise()));
  }

  private static String stop(Assessment assessment, Option option) {
    return Options.isCommand(assessment, option)
        ? "at any sound from the satellite, at any doubt about the object, when the licence holder"
            + " says so, at LOS"
        : "at LOS";
  }
}
