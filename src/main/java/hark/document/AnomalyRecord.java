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
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The anomaly record inside a runbook entry: facts, hypotheses, evidence, what was done. */
final class AnomalyRecord {
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
    hypotheses(out, assessment);
    record(out, assessment, entries);
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
                "believed: battery "
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

  private static String symptom(Assessment assessment, List<Entry> entries) {
    long heard = entries.stream().filter(e -> e.evidence() instanceof Evidence.Heard).count();
    return Brief.silence(assessment) + "; heard in " + Words.count(heard, "entry") + " before";
  }

  private static String groundOrSpace(Assessment assessment) {
    String objects =
        assessment.objects().stream()
            .map(o -> Markdown.plain(o.object()) + " " + Words.percent(o.posterior()))
            .collect(Collectors.joining(", "));
    return "ground: " + stations(assessment) + "; whose it is: " + objects;
  }

  /** {@code Fen Hill works 98 %, Quay works 92 %}. */
  static String stations(Assessment assessment) {
    return assessment.stations().stream()
        .map(s -> Markdown.plain(s.station()) + " works " + Words.percent(s.works()))
        .collect(Collectors.joining(", "));
  }

  private static void hypotheses(Markdown out, Assessment assessment) {
    out.heading(3, "Hypotheses");
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
            Words.percent(assessment.remainder()),
            "at most " + Words.percent(assessment.remainderBound())));
    out.end();
    if (assessment.misfit() < Brief.MISFIT) {
      out.paragraph("Beware: " + Brief.misfit(assessment));
    }
  }

  private static String tell(Assessment assessment, StillFits.Row row) {
    return assessment.groups().stream()
        .filter(g -> row.title().equals(StillFits.title(assessment, g)))
        .findFirst()
        .map(g -> g.title() + "; listening cannot separate these, this might: " + g.wouldSeparate())
        .orElse(row.tell());
  }

  private static void record(Markdown out, Assessment assessment, List<Entry> entries) {
    out.heading(3, "Evidence, actions and results");
    Map<Integer, EvidenceView> views =
        assessment.evidence().stream()
            .collect(Collectors.toMap(EvidenceView::entry, v -> v, (a, b) -> a, TreeMap::new));
    Map<String, String> titles =
        assessment.causes().stream().collect(Collectors.toMap(CauseView::id, CauseView::title));
    if (entries.isEmpty()) {
      out.paragraph("Nothing is logged.");
    }
    for (Entry entry : entries) {
      EvidenceView view = views.get(entry.number());
      String moves = view == null ? "" : BriefDetail.moves(view, titles);
      String moved = moves.isEmpty() ? "" : "; moved, in bits: " + moves;
      out.item(line(entry) + Markdown.plain(moved));
    }
    out.end();
  }

  /** {@code 12, 13 Nov 21:10Z, nothing-heard station=Fen Hill …, by scribe: words}. */
  static String line(Entry entry) {
    List<String> keys = new ArrayList<>();
    new TreeMap<>(entry.keys()).forEach((key, value) -> keys.add(key + "=" + value));
    String by = entry.who().isBlank() ? "" : ", by " + entry.who();
    String note = entry.note().isBlank() ? "" : ": " + entry.note();
    return entry.number()
        + ", "
        + Words.dayAndMinute(entry.evidence().at())
        + ", "
        + Markdown.plain(entry.evidence().kind() + " " + String.join(" ", keys) + by + note);
  }
}
