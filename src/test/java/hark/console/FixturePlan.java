package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented plan over the fixture's windows, answered in the browser's place of the server: each
 * window taken is worth its chance, a hundredth of it by the end, and costs half an hour.
 */
final class FixturePlan {
  private static final double HALF_AN_HOUR = 0.5;
  private static final double WORTH = 0.1;
  private final ObjectMapper mapper = new ObjectMapper();
  private final List<String> posted = new ArrayList<>();
  private final ObjectNode plan;

  private FixturePlan(JsonNode assessment, int revision) {
    plan = mapper.createObjectNode();
    plan.put("revision", revision).put("now", assessment.get("now").asText());
    plan.put("until", "2026-11-17T09:30:00.000Z").put("upperBound", 0.41);
    ArrayNode rows = plan.putArray("windows");
    double found = 0;
    double hours = 0;
    for (JsonNode window : assessment.get("windows")) {
      ObjectNode row = row(rows.addObject(), window);
      boolean taken = !row.get("taken").isNull();
      found += taken ? WORTH * row.get("heard").asDouble() : 0;
      hours += taken ? HALF_AN_HOUR : 0;
    }
    figures(plan.putObject("figures"), found, hours);
    week(plan.putArray("weeks").addObject(), hours);
    after("afterNothing", "After a silent pass, Quay is next.");
    after("afterHeard", "After a reception, record to LOS and send nothing.");
    plan.putObject("oneMoreHour").put("sentence", "One more hour a week adds 0.4 points.");
  }

  /** Answers for the server on this page from now on. */
  static FixturePlan on(Page page) {
    JsonNode fetched =
        new ObjectMapper()
            .valueToTree(page.evaluate("() => fetch('/api/assessment').then((r) => r.json())"));
    FixturePlan plan = new FixturePlan(fetched.get("assessment"), fetched.get("revision").asInt());
    page.route("**/api/plan", plan::answer);
    return plan;
  }

  /** Bodies sent, oldest first. */
  List<String> posted() {
    return posted;
  }

  private ObjectNode row(ObjectNode row, JsonNode window) {
    row.put("window", window.get("id").asText());
    for (String key : List.of("station", "aos", "culmination", "los")) {
      row.put(key, window.get(key).asText());
    }
    JsonNode options = window.get("options");
    String best = options.get(0).get("procedure").asText();
    double heard = options.get(0).get("heardThisPass").asDouble();
    row.put("maxElevationDeg", window.get("maxElevationDeg").asDouble());
    row.put("available", true).put("whyNotAvailable", "");
    row.set("taken", window.get("planned"));
    row.put("best", best).put("title", options.get(0).get("title").asText());
    row.put("heard", heard).put("costHours", HALF_AN_HOUR);
    row.put("adds", WORTH * heard).put("addsDays", -0.1);
    row.put("why", "It is the fixture's pass, and finds what it finds.");
    row.putArray("cautions").add("Moving antennas start without warning.");
    ArrayNode ids = row.putArray("options");
    options.forEach(option -> ids.add(option.get("procedure").asText()));
    return row;
  }

  private static void figures(ObjectNode figures, double found, double hours) {
    figures.put("found", found).put("foundError", 0.02).put("meanDays", 2.1);
    figures.put("meanHours", hours / 2).put("hours", hours);
    figures.put("hazard", 0.01).put("commands", 1);
  }

  private static void week(ObjectNode week, double planned) {
    week.put("from", "2026-11-09T00:00:00.000Z").put("to", "2026-11-16T00:00:00.000Z");
    week.put("granted", 20).put("spent", 3).put("planned", planned);
  }

  private void after(String name, String sentence) {
    ObjectNode after = plan.putObject(name).put("sentence", sentence);
    after.putNull("next");
    ObjectNode cause = after.putArray("causes").addObject();
    cause.put("id", "computer_hung").put("title", "Computer hung");
    cause.put("before", 0.17).put("after", 0.18);
  }

  private void answer(Route route) {
    String body = route.request().postData();
    if (body == null) {
      fulfil(route, plan);
      return;
    }
    posted.add(body);
    fulfil(route, trial(body));
  }

  private ObjectNode trial(String body) {
    double found = plan.get("figures").get("found").asDouble();
    double hours = plan.get("figures").get("hours").asDouble();
    double more = 0;
    double longer = 0;
    for (JsonNode edit : read(body).get("edits")) {
      for (JsonNode row : plan.get("windows")) {
        if (row.get("window").equals(edit.get("window"))) {
          boolean was = !row.get("taken").isNull();
          boolean is = !edit.get("procedure").isNull();
          int turn = (is ? 1 : 0) - (was ? 1 : 0);
          more += turn * WORTH * row.get("heard").asDouble();
          longer += turn * HALF_AN_HOUR;
        }
      }
    }
    ObjectNode trial = mapper.createObjectNode().put("revision", 1);
    trial.set("proposed", plan.get("figures"));
    figures(trial.putObject("edited"), found + more, hours + longer);
    trial
        .putObject("difference")
        .put("found", more)
        .put("meanDays", -more)
        .put("hours", longer)
        .put("hazard", 0);
    week(trial.putArray("weeks").addObject(), hours + longer);
    ArrayNode objections = trial.putArray("objections");
    if (longer > 0) {
      objections.add("The week of 9 Nov would take more hours than it has.");
    }
    trial.put("sentence", longer < 0 ? "You skip a pass." : "You add a pass.");
    trial.putObject("taken");
    return trial;
  }

  private JsonNode read(String body) {
    try {
      return mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(body, e);
    }
  }

  private static void fulfil(Route route, ObjectNode node) {
    route.fulfill(
        new Route.FulfillOptions().setContentType("application/json").setBody(node.toString()));
  }
}
