package hark.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.EnergyReport;
import hark.assessment.EnergyReport.OrbitBalance;
import hark.assessment.MemberTrace;
import hark.assessment.WhatIf;
import hark.assessment.WhyThere;
import java.util.Optional;

/**
 * The JSON of {@code hark energy}: the contract's fields, then others. Numbers have six significant
 * digits, times milliseconds; a number that does not exist is null.
 */
public final class EnergyJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private EnergyJson() {}

  /** One document, with a line end. */
  public static String text(ObjectNode tree) {
    try {
      return MAPPER.writeValueAsString(tree) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always JSON", e);
    }
  }

  /** Report and, if there was one, the what-if. */
  public static ObjectNode of(EnergyReport report, Optional<WhatIf> whatIf) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    AssessmentJson.array(top, "energy", report.energy(), AssessmentJson::energy);
    whatIf.ifPresent(what -> whatIf(top, what));
    AssessmentJson.array(top, "balance", report.balance(), EnergyJson::balance);
    AssessmentJson.array(top, "year", report.year(), EnergyJson::month);
    beside(top, report);
    return top.node();
  }

  private static void beside(JsonFields top, EnergyReport report) {
    AssessmentJson.array(
        top,
        "fullSun",
        report.fullSun(),
        (out, season) -> {
          out.time("from", season.from());
          out.time("to", season.to());
          out.number("fromSpreadDays", season.fromSpreadDays());
          out.number("toSpreadDays", season.toSpreadDays());
          out.node().put("sure", season.sure());
        });
    top.text("seasons", report.seasons());
    top.text("mission", report.mission());
    top.time("now", report.now());
    top.time("end", report.end());
    top.node().put("members", report.members()).put("simulated", report.simulated());
    top.number("cutoffSoc", report.cutoffSoc());
    AssessmentJson.array(
        top,
        "examples",
        report.examples(),
        (out, example) -> {
          out.text("state", example.state());
          out.number("share", example.share());
          out.node().put("member", example.member());
          out.text("explanation", example.explanation());
        });
  }

  /** A what-if by itself. */
  public static ObjectNode of(WhatIf what) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    whatIf(top, what);
    return top.node();
  }

  private static void whatIf(JsonFields top, WhatIf what) {
    AssessmentJson.array(top, "whatIf", what.after(), AssessmentJson::energy);
    AssessmentJson.array(top, "whatIfBefore", what.before(), AssessmentJson::energy);
    AssessmentJson.array(top, "whatIfBalance", what.balanceAfter(), EnergyJson::balance);
    JsonFields change = top.object("whatIfChange");
    change.text("sentence", what.sentence());
    change.text("basis", what.basis());
    JsonFields overrides = change.object("overrides");
    what.overrides().forEach(overrides::text);
    change.node().put("simulated", what.simulated());
    side(change.object("before"), what.change().before());
    side(change.object("after"), what.change().after());
  }

  private static void side(JsonFields out, WhatIf.Side side) {
    out.number("socP50AtHorizon", side.socP50AtHorizon());
    out.number("socP05AtHorizon", side.socP05AtHorizon());
    AssessmentJson.states(out.object("states"), side.states());
    out.number("transmitting", side.transmitting());
  }

  private static void balance(JsonFields out, OrbitBalance orbit) {
    out.time("orbitStart", orbit.orbitStart());
    out.number("arrayWh", orbit.arrayWh());
    out.number("loadsWh", orbit.loadsWh());
    out.number("lossesWh", orbit.lossesWh());
    out.number("storedWh", orbit.storedWh());
    out.time("orbitEnd", orbit.orbitEnd());
    out.number("removedWh", orbit.removedWh());
    out.number("offeredWh", orbit.offeredWh());
    out.number("neededWh", orbit.neededWh());
    out.number("marginWh", orbit.marginWh());
    out.number("margin", orbit.margin());
    out.number("safeWh", orbit.safeWh());
    out.number("nominalWh", orbit.nominalWh());
  }

  private static void month(JsonFields out, EnergyReport.SunMonth month) {
    out.time("from", month.from());
    out.number("betaLeastDeg", month.betaLeastDeg());
    out.number("betaMostDeg", month.betaMostDeg());
    out.number("eclipseFraction", month.eclipseFraction());
    out.number("longestShadowMinutes", month.longestShadowMinutes());
  }

  /** One member. */
  public static ObjectNode of(MemberTrace trace) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.node().put("member", trace.member()).put("members", trace.members());
    top.number("weight", trace.weight());
    JsonFields body = top.object("body");
    trace.body().forEach(body::number);
    AssessmentJson.array(
        top,
        "events",
        trace.events(),
        (out, event) -> {
          out.text("cause", event.cause());
          out.text("title", event.title());
          out.time("onset", event.onset());
          out.text("does", event.does());
        });
    AssessmentJson.array(top, "explanations", trace.explanations(), EnergyJson::share);
    AssessmentJson.array(top, "trace", trace.rows(), EnergyJson::row);
    return top.node();
  }

  private static void share(JsonFields out, MemberTrace.Share share) {
    out.text("title", share.title());
    out.number("share", share.share());
  }

  private static void row(JsonFields out, MemberTrace.Row row) {
    out.time("time", row.time());
    out.number("sunlit", row.sunlit());
    out.number("arrayW", row.arrayWatts());
    out.number("loadW", row.loadWatts());
    out.number("batteryA", row.batteryAmps());
    out.number("volts", row.volts());
    out.number("soc", row.soc());
    out.number("batteryC", row.batteryCelsius());
    out.number("structureC", row.structureCelsius());
    out.text("state", row.state());
    out.text("change", row.change());
  }

  /** Why the bus is as it is. */
  public static ObjectNode of(WhyThere why) {
    JsonFields top = new JsonFields(JsonNodeFactory.instance.objectNode());
    top.time("time", why.time());
    AssessmentJson.array(
        top,
        "states",
        why.states(),
        (out, state) -> {
          out.text("state", state.state());
          out.number("share", state.share());
          out.node().put("member", state.member());
          AssessmentJson.array(out, "reasons", state.reasons(), EnergyJson::reason);
        });
    return top.node();
  }

  private static void reason(JsonFields out, WhyThere.Reason reason) {
    out.text("reason", reason.reason());
    out.text("words", reason.words());
    out.number("share", reason.share());
    out.time("typicalSince", reason.typicalSince());
    out.node().put("member", reason.member());
    AssessmentJson.array(out, "explanations", reason.explanations(), EnergyJson::share);
  }
}
