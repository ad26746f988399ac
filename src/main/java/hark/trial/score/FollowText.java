package hark.trial.score;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.Locale;

/** A report of rules as Markdown for people and as JSON for programs. */
public final class FollowText {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private FollowText() {}

  /** One JSON document with a line end. */
  public static String json(FollowReport report) {
    try {
      return MAPPER.writeValueAsString(report) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a report is always JSON", e);
    }
  }

  /** Markdown with a line end. */
  public static String markdown(FollowReport report) {
    StringBuilder text = new StringBuilder();
    FollowReport.Subject subject = report.subject();
    line(
        text,
        "# Rules for %s: %d campaigns of %.0f days, %s hours a week",
        subject.mission(),
        report.campaigns(),
        subject.days(),
        number(subject.hoursPerWeek()));
    line(text, "");
    line(
        text,
        "Seed %d, truth from the %s world, %d orbits. %d truths were drawn until so many were heard"
            + " and fell silent. No rule regains %s %%, and %s %% are lost even to one who knows the"
            + " truth.",
        subject.seed(),
        subject.truth(),
        subject.orbits().size(),
        report.drawn(),
        percent(report.none()),
        percent(report.noneOracle()));
    if (!subject.without().isEmpty()) {
      line(text, "");
      line(text, "The plan did without: %s.", String.join(", ", subject.without()));
    }
    line(text, "");
    rows(text, report);
    line(text, "");
    against(text, report);
    return text.toString();
  }

  private static void rows(StringBuilder text, FollowReport report) {
    line(
        text,
        "| rule | regained % | days, mean | median | hours | nights | sittings | commands |"
            + " received | harmed % | helped % |");
    line(text, "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (FollowReport.Row row : report.rules()) {
      line(
          text,
          "| %s | %s | %s | %.1f | %s | %.1f | %.1f | %.1f | %.1f | %s | %s |",
          row.rule(),
          percent(row.regained()),
          plain(row.days()),
          row.medianDays(),
          plain(row.hours()),
          row.nights().value(),
          row.sittings().value(),
          row.commands().value(),
          row.received().value(),
          percent(row.harmed()),
          percent(row.helped()));
    }
  }

  private static void against(StringBuilder text, FollowReport report) {
    line(text, "| rule against | more regained, points | hours, ratio | more days |");
    line(text, "| --- | --- | --- | --- |");
    for (FollowReport.Versus versus : report.against()) {
      line(
          text,
          "| %s against %s | %s | %s | %s |",
          versus.rule(),
          versus.other(),
          percent(versus.moreRegained()),
          ratio(versus.hours()),
          plain(versus.moreDays()));
    }
  }

  private static String percent(Paired share) {
    return String.format(
        Locale.ROOT,
        "%.1f (%.1f … %.1f)",
        100 * share.value(),
        100 * share.low(),
        100 * share.high());
  }

  private static String plain(Paired figure) {
    return String.format(
        Locale.ROOT, "%.1f (%.1f … %.1f)", figure.value(), figure.low(), figure.high());
  }

  private static String ratio(Paired figure) {
    return String.format(
        Locale.ROOT, "%.2f (%.2f … %.2f)", figure.value(), figure.low(), figure.high());
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    text.append('\n');
  }
}
