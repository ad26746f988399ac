package hark.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.Assessment;
import hark.assessment.TreeDisagreement;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * The JSON of {@code hark assess}: the contract's fields, then others that people asked for.
 * Numbers have six significant digits, times milliseconds; a number that does not exist is null.
 */
public final class AssessmentJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private AssessmentJson() {}

  /** As text: one document, with a line end. */
  public static String text(Assessment assessment) {
    try {
      return MAPPER.writeValueAsString(of(assessment)) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always JSON", e);
    }
  }

  /** As a tree. */
  public static ObjectNode of(Assessment a) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.time("now", a.now());
    top.number("horizonDays", a.horizonDays());
    top.node().put("members", a.members()).put("seed", a.seed());
    top.number("remainder", a.remainder());
    top.number("misfit", a.misfit());
    array(top, "explanations", a.explanations(), AssessmentJson::explanation);
    array(top, "causes", a.causes(), AssessmentJson::cause);
    array(top, "objects", a.objects(), AssessmentJson::object);
    array(top, "stations", a.stations(), AssessmentJson::station);
    array(top, "evidence", a.evidence(), AssessmentJson::evidence);
    array(top, "energy", a.energy(), AssessmentJson::energy);
    array(top, "windows", a.windows(), WindowJson::window);
    plan(top.object("plan"), a.plan());
    array(top, "goingOn", a.goingOn(), AssessmentJson::goingOn);
    beside(top, a);
    return top.node();
  }

  static <T> void array(
      JsonFields in, String name, List<T> items, BiConsumer<JsonFields, T> writer) {
    ArrayNode array = in.node().putArray(name);
    items.forEach(item -> writer.accept(new JsonFields(array.addObject()), item));
  }

  private static void explanation(JsonFields out, Assessment.Explanation each) {
    out.texts("events", each.events());
    out.text("title", each.title());
    out.number("prior", each.prior());
    out.number("posterior", each.posterior());
    out.number("error", each.error());
  }

  private static void cause(JsonFields out, Assessment.CauseView cause) {
    out.text("id", cause.id());
    out.text("title", cause.title());
    out.number("prior", cause.prior());
    out.number("posterior", cause.posterior());
    out.number("later", cause.later());
    out.number("error", cause.error());
    out.number("ifPriorHalved", cause.ifPriorHalved());
    out.number("ifPriorDoubled", cause.ifPriorDoubled());
    out.text("inseparableGroup", cause.inseparableGroup());
    JsonFields recovery = out.object("selfRecovery");
    recovery.number("probability", cause.selfRecovery().probability());
    recovery.time("p10", cause.selfRecovery().p10());
    recovery.time("p50", cause.selfRecovery().p50());
    recovery.time("p90", cause.selfRecovery().p90());
    recovery.text("note", cause.selfRecovery().note());
    out.text("branch", cause.branch());
    out.text("mechanism", cause.mechanism());
    out.text("signature", cause.signature());
    JsonFields detail = out.object("detail");
    detail.texts("endedBy", cause.detail().endedBy());
    detail.text("confirms", cause.detail().confirms());
    detail.text("refutes", cause.detail().refutes());
    detail.texts("procedures", cause.detail().procedures());
    detail.text("begins", cause.detail().begins());
    detail.texts("sources", cause.detail().sources());
  }

  private static void object(JsonFields out, Assessment.ObjectView object) {
    out.text("object", object.object());
    out.number("prior", object.prior());
    out.number("posterior", object.posterior());
    out.text("name", object.name());
  }

  private static void station(JsonFields out, Assessment.StationView station) {
    out.text("station", station.station());
    out.number("works", station.works());
    out.number("prior", station.prior());
    array(out, "faults", station.faults(), AssessmentJson::stationFault);
  }

  private static void stationFault(JsonFields out, Assessment.FaultView fault) {
    out.text("id", fault.id());
    out.text("title", fault.title());
    out.number("posterior", fault.posterior());
  }

  private static void evidence(JsonFields out, Assessment.EvidenceView entry) {
    out.node().put("entry", entry.entry());
    out.text("title", entry.title());
    JsonFields bits = out.object("bits");
    new TreeMap<>(entry.bits()).forEach(bits::number);
    out.time("at", entry.at());
    out.text("kind", entry.kind());
    entry.tail().ifPresent(tail -> out.number("tail", tail));
  }

  static void energy(JsonFields out, Assessment.EnergyPoint point) {
    out.time("time", point.time());
    out.number("socP05", point.socP05());
    out.number("socP25", point.socP25());
    out.number("socP50", point.socP50());
    out.number("socP75", point.socP75());
    out.number("socP95", point.socP95());
    out.number("transmitting", point.transmitting());
    out.number("sunlit", point.sunlit());
    states(out.object("states"), point.states());
  }

  static void states(JsonFields out, Assessment.States states) {
    out.number("off", states.off());
    out.number("boot", states.boot());
    out.number("safe", states.safe());
    out.number("nominal", states.nominal());
  }

  static void plan(JsonFields out, Assessment.Plan plan) {
    array(
        out,
        "choices",
        plan.choices(),
        (choice, each) -> {
          choice.text("window", each.window());
          choice.text("procedure", each.procedure());
        });
    out.number("costHours", plan.costHours());
    out.number("heardByHorizon", plan.heardByHorizon());
    out.number("upperBound", plan.upperBound());
    out.number("meanDaysToHear", plan.meanDaysToHear());
  }

  private static void goingOn(JsonFields out, Assessment.GoingOn point) {
    out.number("costHours", point.costHours());
    out.number("heard", point.heard());
  }

  /** What stands beside the contract. */
  private static void beside(JsonFields top, Assessment a) {
    top.text("mission", a.mission());
    top.time("separation", a.separation());
    Headline said = Headline.of(a);
    JsonFields headline = top.object("headline");
    headline.text("action", said.action());
    headline.text("caution", said.caution());
    headline.text("why", said.why());
    headline.text("window", said.window().map(Assessment.Window::id));
    top.number("remainderAtStart", a.remainderAtStart());
    top.number("remainderBound", a.remainderBound());
    JsonFields silence = top.object("silence");
    silence.time("lastHeard", a.silence().lastHeard());
    silence.node().put("silentPasses", a.silence().silentPasses());
    array(top, "groups", a.groups(), AssessmentJson::group);
    array(
        top,
        "shadows",
        a.shadows(),
        (out, shadow) -> {
          out.time("from", shadow.from());
          out.time("to", shadow.to());
        });
    top.number("cutoffSoc", a.cutoffSoc());
    top.number("crewHoursPerWeek", a.crewHoursPerWeek());
    top.texts("warnings", a.warnings());
    top.texts("doubts", Doubts.of(a));
    array(top, "treeDisagreements", a.treeDisagreements(), AssessmentJson::disagreement);
    array(top, "tree", a.tree(), AssessmentJson::treeNode);
    a.longLook().ifPresent(look -> LongLookJson.into(top.object("longLook"), look));
  }

  private static void treeNode(JsonFields out, Assessment.TreeNode node) {
    out.text("id", node.id());
    out.text("title", node.title());
    out.text("join", node.join());
    out.node().put("atLeast", node.atLeast());
    out.texts("inputs", node.inputs());
    out.number("prior", node.prior().orElse(Double.NaN));
    out.number("now", node.now().orElse(Double.NaN));
    out.number("error", node.error());
  }

  private static void disagreement(JsonFields out, TreeDisagreement each) {
    out.texts("events", each.events());
    out.text("title", each.title());
    out.node().put("treeSilent", each.treeSilent());
    out.number("audibleShare", each.audibleShare());
    out.node().put("bodies", each.bodies());
  }

  private static void group(JsonFields out, Assessment.Group group) {
    out.text("id", group.id());
    out.text("title", group.title());
    out.texts("causes", group.causes());
    out.number("prior", group.prior());
    out.number("posterior", group.posterior());
    out.number("error", group.error());
    out.text("wouldSeparate", group.wouldSeparate());
    array(
        out,
        "separators",
        group.separators(),
        (one, each) -> {
          one.text("means", each.means());
          one.text("shows", each.shows());
          one.text("doesNot", each.doesNot());
        });
  }
}
