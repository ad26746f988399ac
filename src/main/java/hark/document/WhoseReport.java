package hark.document;

import hark.ensemble.Candidate;
import hark.signal.DopplerCurve;
import hark.signal.Refinement;
import hark.signal.WhoseAnswer;
import hark.signal.WhoseQuestion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What {@code hark whose} prints for people. Pure. */
public final class WhoseReport {
  private static final String NONE = Candidate.NONE;

  private final WhoseQuestion question;
  private final WhoseAnswer answer;
  private final Page page = new Page();

  private WhoseReport(WhoseQuestion question, WhoseAnswer answer) {
    this.question = question;
    this.answer = answer;
  }

  /** Verdict, one line for each candidate, what limits the answer. */
  public static String of(WhoseQuestion question, WhoseAnswer answer) {
    WhoseReport report = new WhoseReport(question, answer);
    report.page.prose("", verdict(answer));
    report.page.blank();
    report.table();
    report.page.blank();
    report.remarks();
    return report.page.toString();
  }

  /** The answer in one or two sentences. */
  public static String verdict(WhoseAnswer answer) {
    WhoseAnswer.Found top = answer.likeliest();
    String weight = Words.percent(top.posterior());
    return switch (answer.verdict()) {
      case FOUND ->
          top.objectId().equals(NONE)
              ? "None of the candidates: " + weight + ". The orbit fits only far from all of them."
              : "Object "
                  + top.objectId()
                  + ": "
                  + weight
                  + ", "
                  + lateness(top)
                  + ruledOut(answer);
      case CANNOT_TELL ->
          "Cannot tell yet. What the curves leave: "
              + String.join(", ", standing(answer))
              + ". Another pass, or another station, would part them.";
      case FITS_NONE ->
          "No candidate fits: the best, "
              + top.objectId()
              + ", misses by "
              + Math.round(top.rmsHz())
              + " Hz. Look at the frequencies, the times and the station before anything else.";
    };
  }

  private static String ruledOut(WhoseAnswer answer) {
    return answer.found().stream()
        .filter(found -> found.posterior() < 0.01 && !found.objectId().equals(NONE))
        .max(Comparator.comparingDouble(WhoseAnswer.Found::prior))
        .map(
            found ->
                ". Object "
                    + found.objectId()
                    + ", which had "
                    + Words.percent(found.prior())
                    + ", is ruled out.")
        .orElse(".");
  }

  private static List<String> standing(WhoseAnswer answer) {
    return answer.found().stream()
        .filter(found -> found.posterior() >= 0.02)
        .sorted(Comparator.comparingDouble(WhoseAnswer.Found::posterior).reversed())
        .map(found -> found.objectId() + " " + Words.percent(found.posterior()))
        .toList();
  }

  private static String lateness(WhoseAnswer.Found found) {
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(found.lateSeconds()));
    String spread = String.format(Locale.ROOT, "%.1f", found.lateSdSeconds());
    String way = found.lateSeconds() >= 0 ? "later" : "earlier";
    return size + " ± " + spread + " s " + way + " than its elements say";
  }

  private void table() {
    page.line(
        "object     before   now     misses by   runs late      carrier less nominal, by pass");
    for (WhoseAnswer.Found found : answer.found()) {
      StringBuilder carriers = new StringBuilder();
      for (double hertz : found.carrierHz()) {
        carriers.append(
            String.format(Locale.ROOT, " %+7.0f", hertz - question.carrier().nominalHz()));
      }
      page.line(
          String.format(
              Locale.ROOT,
              "%-9s %5s %%  %5s %%  %6.0f Hz   %+5.1f ± %4.1f s  %s Hz",
              found.objectId(),
              Words.hundredths(found.prior()),
              Words.hundredths(found.posterior()),
              found.rmsHz(),
              found.lateSeconds(),
              found.lateSdSeconds(),
              carriers.toString()));
    }
  }

  private void remarks() {
    List<String> names = new ArrayList<>();
    int points = 0;
    for (DopplerCurve curve : question.curves()) {
      points += curve.points().size();
      String name = curve.station() + " " + Words.yearAndMinute(curve.points().get(0).time());
      names.add(name + " (" + Words.count(curve.points().size(), "point") + ")");
    }
    page.prose("Measured  ", String.join(", ", names) + ".");
    if (!answer.setAside().isEmpty()) {
      page.prose(
          "Set aside ",
          Words.count(answer.setAside().size(), "point")
              + " of "
              + points
              + " that no candidate explains: "
              + String.join(
                  ", ", answer.setAside().stream().map(p -> Words.clock(p.time())).toList())
              + ".");
    }
    page.prose(
        "Limits    ",
        "A station clock that runs ahead and an object that runs late shift a curve alike; only what"
            + " is believed of both tells them apart, and the spread of the lateness counts it in."
            + " The points scatter by "
            + Math.round(answer.scaleHz())
            + " Hz.");
  }

  /**
   * What start and end of contacts say by themselves.
   *
   * @param weights after them, by object
   */
  public static String byTimes(int contacts, Map<String, Double> weights) {
    Page page = new Page();
    List<String> said = new ArrayList<>();
    weights.forEach((object, weight) -> said.add(object + " " + Words.percent(weight)));
    page.prose(
        "Times     ",
        "Start and end of "
            + Words.countSpoken(contacts, "contact")
            + " alone leave "
            + String.join(", ", said)
            + ".");
    page.blank();
    return page.toString();
  }

  /** The corrected orbit in words. */
  public static String of(Refinement refined) {
    Page page = new Page();
    page.prose(
        "Refined   ",
        String.format(
            Locale.ROOT,
            "mean anomaly %+.4f ± %.4f°, node %+.4f ± %.4f°%s; misses by %.0f Hz. Along the track it"
                + " is known to ± %.1f km at %s.",
            refined.meanAnomalyDeg(),
            refined.meanAnomalySdDeg(),
            refined.raanDeg(),
            refined.raanSdDeg(),
            refined.meanMotionRatioSd() > 0
                ? String.format(
                    Locale.ROOT,
                    ", mean motion %+.1f ± %.1f parts in a million",
                    1e6 * refined.meanMotionRatio(),
                    1e6 * refined.meanMotionRatioSd())
                : ", mean motion kept: the passes are too few or too close for it",
            refined.rmsHz(),
            refined.alongTrackSdMeters() / 1000,
            Words.yearAndMinute(refined.at())));
    return page.toString();
  }
}
