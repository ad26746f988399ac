package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import hark.evidence.Entry;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/**
 * A runbook entry for the present assessment, in Markdown: the anomaly record, the procedure, the
 * pass plan and the handover, every field filled from what is known. Only what people must decide
 * is left to them, and marked so.
 */
public final class RunbookEntry {
  /** Marks a field that only people can fill. */
  static final String TO_FILL = "**to fill**";

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final Assessment assessment;
  private final MissionFacts facts;
  private final List<Entry> entries;
  private final Headline headline;
  private final Markdown out = new Markdown();

  private RunbookEntry(Assessment assessment, MissionFacts facts, List<Entry> entries) {
    this.assessment = assessment;
    this.facts = facts;
    this.entries = entries;
    this.headline = Headline.of(assessment, facts.mayAuthorise());
  }

  /**
   * The entry's text.
   *
   * @param entries the record as it stands, corrections applied
   */
  public static String of(Assessment assessment, MissionFacts facts, List<Entry> entries) {
    RunbookEntry entry = new RunbookEntry(assessment, facts, entries);
    entry.head();
    AnomalyRecord.write(entry.out, assessment, entries);
    entry.procedure();
    PassPlan.write(entry.out, assessment, facts);
    entry.handover();
    return entry.out.toString();
  }

  /** Name of the entry, fit for a file: {@code sandpiper-20261114T093000Z}. */
  public static String id(Assessment assessment) {
    return slug(assessment.mission()) + "-" + stamp(assessment.now());
  }

  /** A name, fit for a file. */
  static String slug(String name) {
    String slug =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  /** {@code 20261114T093000Z}. */
  static String stamp(Instant time) {
    return STAMP.format(time);
  }

  private void head() {
    out.heading(1, "Contact lost: " + Markdown.plain(assessment.mission()));
    out.paragraph(
        "Written by Hark for "
            + Words.yearAndMinute(assessment.now())
            + ". The probabilities are computed from the mission file and the journal; they are"
            + " beliefs, not measurements. Fields marked "
            + TO_FILL
            + " are for people.");
    out.header("Field", "Value");
    out.field("Entry", id(assessment));
    out.field("Version", "1, draft");
    out.field("Author", TO_FILL);
    out.field("Approver", TO_FILL);
    out.end();
  }

  private void procedure() {
    out.heading(2, "Procedure");
    out.paragraph("**" + Markdown.plain(headline.dated()) + "**");
    out.paragraph(Markdown.plain(headline.why()));
    out.header("Field", "Value");
    out.field(
        "Trigger", "nothing heard although a reception was expected: " + Brief.silence(assessment));
    out.field("Purpose", "hear the satellite again, and learn what state it is in");
    out.field("Preconditions", preconditions());
    out.field(
        "Roles",
        "operations lead (says go for any transmission), station operator, commander with a second"
            + " person reading back, scribe; one person may hold several");
    out.field("Time-critical", timeCritical());
    out.field(
        "Exit test",
        "a reception with our call sign, or two receptions that follow the predicted Doppler curve");
    out.field(
        "Rollback", "listening changes nothing; a command that was received cannot be taken back");
    out.field("References", "the journal entries above; the procedure's text below");
    out.field("Tested on", "no model of the spacecraft: " + computed());
    out.end();
    steps();
    hazards();
  }

  private String computed() {
    return Words.count(assessment.members(), "simulated body")
        + ", seed "
        + assessment.seed()
        + ", "
        + Words.days(assessment.horizonDays())
        + " ahead, tail probability of the evidence "
        + Words.decimal(assessment.misfit(), 3);
  }

  private String preconditions() {
    return headline
        .window()
        .map(
            w ->
                "battery "
                    + Words.hundredths(w.socP25())
                    + "–"
                    + Words.hundredths(w.socP75())
                    + " % (middle half); "
                    + Light.light(w.minutesSinceSunrise())
                    + "; "
                    + PassPlan.licence(facts, w.station()))
        .orElse("none: nothing is planned");
  }

  private String timeCritical() {
    return headline
        .window()
        .map(
            w ->
                "only the window itself: "
                    + Words.dayAndMinute(w.aos())
                    + " to "
                    + Words.clock(w.los()))
        .orElse("no");
  }

  private void steps() {
    if (headline.window().isEmpty()) {
      return;
    }
    Window window = headline.window().get();
    Option option = Options.planned(window).orElseThrow();
    String station = Markdown.plain(window.station());
    String aos = window.aos().truncatedTo(ChronoUnit.SECONDS).toString();
    out.heading(3, "Steps");
    out.step(
        1,
        "Before the pass, listen for a satellite known to send, on the same band and hand. Expected:"
            + " heard near its usual level. Time-out: its LOS. If not: the station may be deaf; log"
            + " `station-check result=missed` and look there first.");
    out.step(
        2,
        "At "
            + Words.clock(window.aos())
            + ", "
            + Markdown.plain(headline.task())
            + "; record all of it. Expected: heard with "
            + Words.percent(option.heardThisPass(), option.heardThisPassError())
            + ". Time-out: LOS at "
            + Words.clock(window.los())
            + ". If not: log it, and go to the next pass of the plan.");
    out.step(
        3,
        "Log what happened, at once and as it was: `hark log … nothing-heard station=\""
            + station
            + "\" pass="
            + aos
            + "`, or `heard …`, or `not-listened …`.");
    out.step(4, "Repeat step 1 after the pass when nothing was heard.");
    out.end();
    Options.procedure(assessment, option.procedure()).ifPresent(p -> out.embed(p.markdown(), 2));
  }

  private void hazards() {
    out.heading(3, "Hazards and forbidden actions");
    out.item(
        "No transmission without a licence that covers band, place and time, and without the word of"
            + " a person it names. Whoever transmits must be able to stop at once.");
    out.item(
        "Never send to a neighbour of the same launch; keep people away from moving antennas.");
    if (!headline.caution().isEmpty()) {
      out.item(Markdown.plain(headline.caution()));
    }
    Cautions.planned(assessment).forEach(c -> out.item(Markdown.plain(c)));
    out.end();
  }

  private void handover() {
    out.heading(2, "Handover");
    out.header("Field", "Value");
    out.field("Present hypotheses", hypotheses());
    out.field(
        "Last action", entries.isEmpty() ? "none logged" : AnomalyRecord.line(assessment, last()));
    out.field("Pending timers", Markdown.plain(pending()));
    out.field("Next passes", nextPasses());
    out.field("Open anomalies", "this one");
    out.field("Equipment", AnomalyRecord.stations(assessment));
    out.field("Standing orders", Markdown.plain(headline.dated()));
    out.field("Going on", Markdown.plain(Brief.goingOn(assessment)));
    out.end();
  }

  private Entry last() {
    return entries.get(entries.size() - 1);
  }

  private String hypotheses() {
    return String.join(
        "; ",
        StillFits.rows(assessment).stream()
            .limit(4)
            .map(r -> Markdown.plain(r.title()) + " " + Words.percent(r.now(), r.error()))
            .toList());
  }

  private String pending() {
    String text = Recovery.sentences(assessment);
    return text.isEmpty()
        ? "none known"
        : "by itself before " + Words.day(Options.end(assessment)) + ": " + text;
  }

  private String nextPasses() {
    List<String> passes =
        Options.planned(assessment).stream()
            .limit(4)
            .map(w -> Words.dayAndMinute(w.aos()) + " " + Markdown.plain(w.station()))
            .toList();
    return passes.isEmpty() ? "none planned" : String.join("; ", passes);
  }
}
