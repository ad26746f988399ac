package hark.document;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.ReviewCase;
import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.Effort;
import hark.assessment.ReviewCase.LastDate;
import hark.assessment.ReviewCase.Part;
import hark.assessment.ReviewCase.Watch;

/**
 * The JSON of {@code hark case}. Weights are shares of all that still fits, 0…1; hours are people's
 * hours; numbers have six significant digits; what is not known is null.
 *
 * <pre>
 * {"mission","now","until","lastHeard"|null,"silentPasses","crewHoursPerWeek",
 *  "hours","found","foundError","byListening",         the plan until then, and the part without commands
 *  "headline",                                          the sentence on top of the page
 *  "curve":[{"costHours","heard"}],
 *  "steps":[{"fromHours","toHours","adds"}],            the next ten hours, the ten after them
 *  "effort":{"gain","perHours","fromHours"|null,"monthHours","monthAtMost"},
 *  "dates":[{"from","until"|null,"spreadDays","what","weight"|null,"basis","procedure"|null}],
 *  "orbit":{"heightKm","areaPerMass","early","middle"|null,"late"|null}|null,
 *  "unheard":[{"id","sentence","weight","parts":[{"title","weight"}]}],"notWorkedOut",   sum to 1
 *  "watch":{"station","unattended","windows","hoursPerWeek","found","catches":[{"title","weight"}]}|null,
 *  "shifts":[{"assumption","lowWords","low","highWords","high"}],       what found would be
 *  "assumptions":["…"],"goingOn":["…"],"stopping":["…"],"defensible"}
 * </pre>
 */
public final class CaseJson {
  private CaseJson() {}

  /** One document, with a line end. */
  public static String text(ReviewCase made) {
    return EnergyJson.text(of(made));
  }

  /** The tree. */
  public static ObjectNode of(ReviewCase made) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.text("mission", made.mission());
    top.time("now", made.now());
    top.time("until", made.until());
    top.time("lastHeard", made.silence().lastHeard());
    top.node().put("silentPasses", made.silence().silentPasses());
    top.number("crewHoursPerWeek", made.crewHoursPerWeek());
    top.number("hours", made.hours());
    top.number("found", made.found());
    top.number("foundError", made.foundError());
    top.number("byListening", made.byListening());
    top.text("headline", new CaseText(made).headline());
    effort(top, made);
    AssessmentJson.array(top, "dates", made.dates(), CaseJson::date);
    made.orbit()
        .ifPresentOrElse(
            orbit -> orbit(top.object("orbit"), orbit), () -> top.node().putNull("orbit"));
    AssessmentJson.array(
        top,
        "unheard",
        made.unheard(),
        (out, group) -> {
          out.text("id", group.id());
          out.text("sentence", group.sentence());
          out.number("weight", group.weight());
          AssessmentJson.array(out, "parts", group.parts(), CaseJson::part);
        });
    top.number("notWorkedOut", made.notWorkedOut());
    made.watch()
        .ifPresentOrElse(
            watch -> watch(top.object("watch"), watch), () -> top.node().putNull("watch"));
    AssessmentJson.array(
        top,
        "shifts",
        made.shifts(),
        (out, shift) -> {
          out.text("assumption", shift.assumption());
          out.text("lowWords", shift.lowWords());
          out.number("low", shift.low());
          out.text("highWords", shift.highWords());
          out.number("high", shift.high());
        });
    top.texts("assumptions", made.assumptions());
    top.texts("goingOn", made.arguments().goingOn());
    top.texts("stopping", made.arguments().stopping());
    top.text("defensible", made.arguments().defensible());
    return top.node();
  }

  private static void effort(JsonFields top, ReviewCase made) {
    AssessmentJson.array(
        top,
        "curve",
        made.curve(),
        (out, point) -> {
          out.number("costHours", point.costHours());
          out.number("heard", point.heard());
        });
    AssessmentJson.array(
        top,
        "steps",
        made.steps(),
        (out, step) -> {
          out.number("fromHours", step.fromHours());
          out.number("toHours", step.toHours());
          out.number("adds", step.adds());
        });
    Effort effort = made.effort();
    JsonFields out = top.object("effort");
    out.number("gain", effort.gain());
    out.number("perHours", effort.perHours());
    out.number("fromHours", effort.fromHours().orElse(Double.NaN));
    out.number("monthHours", effort.monthHours());
    out.number("monthAtMost", effort.monthAtMost());
  }

  private static void date(JsonFields out, Dated date) {
    out.time("from", date.from());
    out.time("until", date.until());
    out.number("spreadDays", date.spreadDays());
    out.text("what", date.what());
    out.number("weight", date.weight());
    out.text("basis", date.basis());
    out.text("procedure", date.procedure());
  }

  private static void orbit(JsonFields out, LastDate orbit) {
    out.number("heightKm", orbit.heightKm());
    out.number("areaPerMass", orbit.areaPerMass());
    out.time("early", orbit.early());
    out.time("middle", orbit.middle());
    out.time("late", orbit.late());
  }

  private static void part(JsonFields out, Part part) {
    out.text("title", part.title());
    out.number("weight", part.weight());
  }

  private static void watch(JsonFields out, Watch watch) {
    out.text("station", watch.station());
    out.node().put("unattended", watch.unattended()).put("windows", watch.windows());
    out.number("hoursPerWeek", watch.hoursPerWeek());
    out.number("found", watch.found());
    AssessmentJson.array(out, "catches", watch.catches(), CaseJson::part);
  }
}
