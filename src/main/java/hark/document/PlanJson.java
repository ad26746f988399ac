package hark.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.Assessment;
import hark.assessment.PlanTrial;
import hark.assessment.PlanView;
import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import java.util.List;

/** A plan, and another one beside it, as JSON. */
public final class PlanJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private PlanJson() {}

  /** The proposal. */
  public static ObjectNode of(PlanView view) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.time("now", view.now());
    top.time("until", view.until());
    figures(top.object("figures"), view.figures());
    top.number("upperBound", view.upperBound());
    weeks(top, view.weeks());
    AssessmentJson.array(top, "windows", view.windows(), PlanJson::row);
    after(top.object("afterNothing"), "found", view.afterNothing());
    after(top.object("afterHeard"), "again", view.afterHeard());
    JsonFields more = top.object("oneMoreHour");
    more.text("sentence", view.oneMoreHour().sentence());
    more.number("hours", view.oneMoreHour().hours());
    more.number("found", view.oneMoreHour().found());
    more.number("days", -view.oneMoreHour().days());
    return top.node();
  }

  /**
   * As {@code hark plan} prints it: the contract's keys of a plan first, then everything of the
   * proposal.
   */
  public static String text(Assessment assessment, PlanView view) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.time("now", view.now());
    top.time("until", view.until());
    JsonFields plan = top.object("plan");
    AssessmentJson.plan(plan, assessment.plan());
    ObjectNode whole = of(view);
    whole.remove("now");
    whole.remove("until");
    plan.node().setAll(whole);
    try {
      return MAPPER.writeValueAsString(top.node()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always JSON", e);
    }
  }

  private static void figures(JsonFields out, PlanFigures figures) {
    out.number("found", figures.found());
    out.number("foundError", figures.foundError());
    out.number("meanDays", figures.meanDays());
    out.number("meanHours", figures.meanHours());
    out.number("hours", figures.hours());
    out.number("hazard", figures.hazard());
    out.node().put("commands", figures.commands());
  }

  private static void weeks(JsonFields top, List<PlanBook.WeekHours> weeks) {
    AssessmentJson.array(
        top,
        "weeks",
        weeks,
        (out, week) -> {
          out.time("from", week.from());
          out.time("to", week.to());
          out.number("granted", week.granted());
          out.number("spent", week.spent());
          out.number("planned", week.planned());
        });
  }

  private static void row(JsonFields out, PlanView.Row row) {
    out.text("window", row.window().id());
    out.text("station", row.window().station());
    out.time("aos", row.window().aos());
    out.time("culmination", row.window().culmination());
    out.time("los", row.window().los());
    out.number("maxElevationDeg", row.window().maxElevationDeg());
    out.node().put("available", row.notAvailable().isEmpty());
    out.text("whyNotAvailable", row.notAvailable().orElse(""));
    out.text("taken", row.taken());
    out.text("best", row.best());
    out.text("title", row.title());
    out.number("heard", row.heard());
    out.number("costHours", row.costHours());
    out.number("adds", row.adds());
    out.number("addsDays", -row.saves());
    out.node().put("fits", row.fits());
    out.text("why", row.why());
    out.texts("cautions", row.cautions());
    out.texts("options", row.options());
  }

  private static void after(JsonFields out, String chance, PlanView.After after) {
    out.text("sentence", after.sentence());
    if (after.window().isPresent()) {
      JsonFields next = out.object("next");
      next.text("window", after.window());
      next.text("procedure", after.procedure());
    } else {
      out.node().putNull("next");
    }
    out.number(chance, after.chance());
    out.number("hours", after.hours());
    AssessmentJson.array(
        out,
        "causes",
        after.causes(),
        (cause, moved) -> {
          cause.text("id", moved.id());
          cause.text("title", moved.title());
          cause.number("before", moved.before());
          cause.number("after", moved.after());
        });
  }

  /** Another plan beside the proposed one. */
  public static ObjectNode of(PlanTrial trial) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    figures(top.object("proposed"), trial.proposed());
    figures(top.object("edited"), trial.edited());
    JsonFields difference = top.object("difference");
    difference.number("found", trial.edited().found() - trial.proposed().found());
    difference.number("meanDays", trial.edited().meanDays() - trial.proposed().meanDays());
    difference.number("hours", trial.edited().hours() - trial.proposed().hours());
    difference.number("hazard", trial.edited().hazard() - trial.proposed().hazard());
    weeks(top, trial.weeks());
    top.texts("objections", trial.objections());
    top.text("sentence", trial.sentence());
    JsonFields taken = top.object("taken");
    trial.taken().forEach(taken::text);
    return top.node();
  }
}
