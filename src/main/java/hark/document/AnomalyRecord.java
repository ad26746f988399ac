package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.Assessment.EvidenceView;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The anomaly record inside a runbook entry: facts, hypotheses, evidence, what was done. */
final class AnomalyRecord {
  /** Movements told for one entry. */
  private static final int MOVES = 3;

  /** Keys that an entry's title and times already say. */
  private static final Set<String> TOLD =
      Set.of("at", "from", "to", "station", "way", "level_db", "volts", "result", "why", "text");

  private AnomalyRecord() {}

  static void write(Markdown out, Assessment assessment, List<Entry> entries) {
    out.heading(2, "Anomaly record");
    out.header("Field", "Value");
    out.field("Found at", found(assessment, entries));
    out.field("Last nominal", lastNominal(assessment));
    out.field("State of the vehicle", state(assessment));
    out.field("Symptom, facts only", symptom(assessment, entries));
    out.field("Severity", "contact lost: the satellite can be neither observed nor commanded");
    out.field("Ground or space", groundOrSpace(assessment));
    out.field("Owner", RunbookEntry.TO_FILL);
    out.field("Authority", "operations lead; for any transmission a person named in the licence");
    out.field("Closure", "open; close it with a reception that passes the exit test");
    out.field("Lessons", "none before closure");
    out.end();
    record(out, assessment, entries);
    hypotheses(out, assessment);
    moved(out, assessment, entries);
  }

  private static String found(Assessment assessment, List<Entry> entries) {
    return entries.stream()
        .map(Entry::evidence)
        .filter(e -> e instanceof Evidence.NothingHeard)
        .map(Evidence::at)
        .filter(t -> assessment.silence().lastHeard().map(t::isAfter).orElse(true))
        .min(Comparator.naturalOrder())
        .map(t -> Words.yearAndMinute(t) + ", the first pass without a sound")
        .orElse("no pass without a sound is logged");
  }

  private static String lastNominal(Assessment assessment) {
    return assessment
        .silence()
        .lastHeard()
        .map(t -> "heard at " + Words.yearAndMinute(t))
        .orElse("never heard since separation at " + Words.yearAndMinute(assessment.separation()));
  }

  private static String state(Assessment assessment) {
    Optional<EnergyPoint> point =
        assessment.energy().stream()
            .filter(p -> !p.time().isBefore(assessment.now()))
            .min(Comparator.comparing(EnergyPoint::time));
    return point
        .map(
            p ->
                "not observed. Believed: battery "
                    + Words.hundredths(p.socP25())
                    + "–"
                    + Words.hundredths(p.socP75())
                    + " % (middle half); bus off "
                    + Words.percent(p.states().off())
                    + ", starting "
                    + Words.percent(p.states().boot())
                    + ", safe "
                    + Words.percent(p.states().safe())
                    + ", nominal "
                    + Words.percent(p.states().nominal()))
        .orElse("not worked out");
  }

  /** What was and was not heard, and how well the stations were known to hear. */
  private static String symptom(Assessment assessment, List<Entry> entries) {
    List<Evidence> since =
        entries.stream()
            .map(Entry::evidence)
            .filter(e -> assessment.silence().lastHeard().map(e.at()::isAfter).orElse(true))
            .toList();
    Map<String, Long> silent =
        since.stream()
            .filter(Evidence.NothingHeard.class::isInstance)
            .map(Evidence.NothingHeard.class::cast)
            .collect(
                Collectors.groupingBy(
                    Evidence.NothingHeard::station, TreeMap::new, Collectors.counting()));
    String stations =
        silent.entrySet().stream()
            .map(e -> Markdown.plain(e.getKey()) + " " + e.getValue())
            .collect(Collectors.joining(", "));
    long heard = entries.stream().filter(e -> e.evidence() instanceof Evidence.Heard).count();
    long missed = since.stream().filter(e -> e instanceof Evidence.NotListened).count();
    return Brief.silence(assessment)
        + (stations.isEmpty() ? "" : " (" + stations + ")")
        + "; "
        + (heard == 0 ? "never heard" : "heard " + Words.count(heard, "time") + " before")
        + (missed == 0 ? "" : "; " + Words.count(missed, "pass") + " not listened to")
        + checks(since);
  }

  private static String checks(List<Evidence> since) {
    return since.stream()
        .filter(Evidence.StationCheck.class::isInstance)
        .map(Evidence.StationCheck.class::cast)
        .map(
            c ->
                "; "
                    + Markdown.plain(c.station())
                    + (c.heard() ? " heard" : " missed")
                    + " a known satellite on "
                    + Words.dayAndMinute(c.at()))
        .collect(Collectors.joining());
  }

  private static String groundOrSpace(Assessment assessment) {
    String objects =
        assessment.objects().stream()
            .map(o -> Markdown.plain(o.object()) + " " + Words.percent(o.posterior()))
            .collect(Collectors.joining(", "));
    return "ground: " + stations(assessment) + "; whose it is: " + objects;
  }

  /** {@code Fen Hill works, 98 %; Quay works, 92 %}. */
  static String stations(Assessment assessment) {
    return assessment.stations().stream()
        .map(s -> Markdown.plain(s.station()) + " works, " + Words.percent(s.works()))
        .collect(Collectors.joining("; "));
  }

  private static void hypotheses(Markdown out, Assessment assessment) {
    out.heading(3, "Hypotheses");
    out.paragraph(
        "Beliefs, computed from the facts above and the priors of the mission file. Two causes at"
            + " once count in both rows.");
    out.header("Hypothesis", "At start", "Now", "What would tell");
    for (StillFits.Row row : StillFits.rows(assessment)) {
      out.row(
          List.of(
              Markdown.plain(row.title()),
              Words.percent(row.start()),
              Words.percent(row.now(), row.error()),
              Markdown.plain(tell(assessment, row))));
    }
    out.row(
        List.of(
            "three or more things at once, not worked out",
            "",
            Words.percent(assessment.remainder())
                + ", at most "
                + Words.percent(assessment.remainderBound()),
            "a small tail probability of the evidence"));
    out.end();
    if (assessment.misfit() < Doubts.MISFIT) {
      out.paragraph("Beware: " + Doubts.misfit(assessment));
    }
  }

  private static String tell(Assessment assessment, StillFits.Row row) {
    return assessment.groups().stream()
        .filter(g -> row.title().equals(g.title()) && row.now() == g.posterior())
        .findFirst()
        .map(
            g ->
                StillFits.names(assessment, g)
                    + "; listening cannot separate these, this might: "
                    + g.wouldSeparate())
        .orElse(row.tell());
  }

  private static void record(Markdown out, Assessment assessment, List<Entry> entries) {
    out.heading(3, "Evidence, actions and results");
    if (entries.isEmpty()) {
      out.paragraph("Nothing is logged.");
    }
    for (Entry entry : entries) {
      out.item(line(assessment, entry));
    }
    out.end();
  }

  private static void moved(Markdown out, Assessment assessment, List<Entry> entries) {
    Map<String, String> titles =
        assessment.causes().stream().collect(Collectors.toMap(CauseView::id, CauseView::title));
    List<List<String>> rows = new ArrayList<>();
    for (Entry entry : entries) {
      String moves =
          view(assessment, entry).map(v -> BriefEvidence.moves(v, titles, MOVES)).orElse("");
      if (!moves.isEmpty()) {
        rows.add(List.of(Integer.toString(entry.number()), Markdown.plain(moves)));
      }
    }
    if (!rows.isEmpty()) {
      out.paragraph("What each entry moved most, in bits of odds; those left out moved nothing.");
      out.header("Entry", "Moved");
      rows.forEach(out::row);
      out.end();
    }
  }

  private static Optional<EvidenceView> view(Assessment assessment, Entry entry) {
    return assessment.evidence().stream().filter(v -> v.entry() == entry.number()).findFirst();
  }

  /** {@code 12, 13 Nov 21:10Z, Fen Hill: nothing heard, ear (window_hz 10000). Scribe: words}. */
  static String line(Assessment assessment, Entry entry) {
    String title = view(assessment, entry).map(EvidenceView::title).orElse(entry.evidence().kind());
    List<String> keys = new ArrayList<>();
    new TreeMap<>(entry.keys())
        .forEach(
            (key, value) -> {
              if (!TOLD.contains(key)) {
                keys.add(key + " " + value);
              }
            });
    String more = keys.isEmpty() ? "" : " (" + String.join(", ", keys) + ")";
    String said = entry.note().isBlank() ? "" : ": " + entry.note();
    String who = entry.who().isBlank() && !said.isEmpty() ? "noted" : entry.who();
    String by = who.isBlank() ? "" : " — " + who + said;
    return entry.number()
        + ", "
        + Words.dayAndMinute(entry.evidence().at())
        + until(entry.evidence())
        + ", "
        + Markdown.plain(title + more + by);
  }

  private static String until(Evidence evidence) {
    return evidence.end().isAfter(evidence.at()) ? " to " + Words.clock(evidence.end()) : "";
  }
}
