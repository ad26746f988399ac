package hark.trial.score;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** A report as Markdown for people and as JSON for programs. */
public final class ReportText {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private ReportText() {}

  /** One JSON document with a line end. */
  public static String json(Report report) {
    ObjectNode tree = MAPPER.valueToTree(report);
    tree.put("outside", report.outside().size());
    for (int k = 0; k < report.figures().size(); k++) {
      ((ObjectNode) tree.get("figures").get(k)).put("inside", report.figures().get(k).inside());
    }
    if (!report.cases().isEmpty()) {
      tree.put("causeGainAgainstLarge", report.gainAgainstLarge());
      tree.put("setGainAgainstLarge", report.setGainAgainstLarge());
    }
    try {
      return MAPPER.writeValueAsString(tree) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always JSON", e);
    }
  }

  /** Markdown with a line end. */
  public static String markdown(Report report) {
    StringBuilder text = new StringBuilder();
    Report.Subject subject = report.subject();
    line(
        text,
        "# Trial of %s: %d campaigns of %.0f days",
        subject.mission(),
        report.campaigns(),
        subject.days());
    line(text, "");
    line(
        text,
        "Seed %d, truth from the %s world, %d bodies a set. %d truths were drawn until so many lost"
            + " contact; in %d nothing was heard at all. %.1f entries a campaign.",
        subject.seed(),
        subject.truth(),
        subject.members(),
        report.drawn(),
        report.neverHeard(),
        report.entries());
    line(text, "");
    scores(text, report);
    cases(text, report);
    int outside = report.outside().size();
    line(
        text,
        "%d of %d figures lie outside their 99 %% band; by chance it would be about %.1f.",
        outside,
        report.figures().size(),
        0.01 * report.figures().size());
    for (Figure.What what : Figure.What.values()) {
      table(text, what, report.figures().stream().filter(f -> f.what() == what).toList());
    }
    return text.toString();
  }

  private static void scores(StringBuilder text, Report report) {
    line(text, "| score | value |");
    line(text, "| --- | --- |");
    line(text, "| log score over the prior, explanations | %s |", mean(report.setGain()));
    line(text, "| log score over the prior, causes | %s |", mean(report.causeGain()));
    line(text, "| truths of three and more events | %d |", report.larger());
    line(text, "| true explanation without weight | %d |", report.floored());
    line(
        text,
        "| effective bodies behind the true explanation, tenth and median | %.0f, %.0f |",
        report.behind()[0],
        report.behind()[1]);
    line(text, "| misfit below %.2f | %.1f %% |", Report.MISFIT, 100 * report.misfit());
    line(text, "| the same where something was heard | %.1f %% |", 100 * report.misfitHeard());
    line(text, "");
  }

  private static String mean(Report.Mean mean) {
    return String.format(Locale.ROOT, "%.3f ± %.3f", mean.value(), mean.error());
  }

  private static void cases(StringBuilder text, Report report) {
    if (report.cases().isEmpty()) {
      return;
    }
    line(text, "| case | variation | cause apart | set gain | large | causes' gain | large |");
    line(text, "| --- | --- | --- | --- | --- | --- | --- |");
    for (Closeness c : report.cases()) {
      line(
          text,
          "| %d | %.3f | %.3f | %.3f | %.3f | %.3f | %.3f |",
          c.index(),
          c.variation(),
          c.mostApart(),
          c.setGain(),
          c.largeSetGain(),
          c.causeGain(),
          c.largeCauseGain());
    }
    line(text, "");
    line(
        text,
        "Gain against the large sample's: %.1f %% by explanations, %.1f %% by causes.",
        100 * report.setGainAgainstLarge(),
        100 * report.gainAgainstLarge());
    line(text, "");
  }

  private static void table(StringBuilder text, Figure.What what, List<Figure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    line(text, "");
    line(text, "## %s", title(what));
    line(text, "");
    line(text, "| of | count | value | expected | 99 %% band | |");
    line(text, "| --- | --- | --- | --- | --- | --- |");
    for (Figure f : figures) {
      line(
          text,
          "| %s | %d | %s | %s | %s … %s | %s |",
          f.of(),
          f.count(),
          number(f.value()),
          number(f.expected()),
          number(f.low()),
          number(f.high()),
          f.inside() ? "" : "**outside**");
    }
  }

  private static String title(Figure.What what) {
    return switch (what) {
      case CALIBRATION -> "True in so many campaigns, against the sum of the posteriors";
      case RELIABILITY -> "The same by bins of the posterior";
      case COVERAGE -> "Truths inside central intervals";
      case RANKS -> "Unevenness of ranks";
    };
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, value < 1 ? "%.3f" : "%.1f", value);
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
