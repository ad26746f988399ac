package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.WhatIf;
import hark.document.EnergyJson;
import hark.document.LongLookJson;
import hark.mission.MissionNumber;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What the page can ask about the electrical system of the revision now shown. */
final class EnergyApi {
  /** Overrides in one question; nobody compares more worlds than that at once. */
  private static final int MOST_OVERRIDES = 50;

  private final ObjectMapper mapper = new ObjectMapper();
  private final Newest newest = new Newest();
  private final Revisions revisions;

  EnergyApi(Revisions revisions) {
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/energy", (values, body) -> ask(this::report))
        .on("POST", "/api/energy/what-if", (values, body) -> whatIf(body))
        .on("GET", "/api/recovery", (values, body) -> recovery(values.getOrDefault("days", "")))
        .on("GET", "/api/energy/why", (values, body) -> why(values.getOrDefault("at", "")))
        .on("GET", "/api/energy/member", (values, body) -> member(values.getOrDefault("n", "")));
  }

  private Reply ask(Function<EnergyQuestions, ObjectNode> question) {
    Optional<Revisions.Revision> now = revisions.current();
    if (now.isEmpty()) {
      return Reply.problem(503, "the first answer is still being worked out", "", "wait a moment");
    }
    return now.get()
        .answer()
        .energy()
        .map(question)
        .map(node -> Reply.json(200, node.put("revision", now.get().number())))
        .orElseGet(() -> Reply.problem(404, "nothing is known of the electrical system", "", ""));
  }

  private ObjectNode report(EnergyQuestions energy) {
    ObjectNode node = EnergyJson.of(energy.report(), Optional.empty());
    ArrayNode numbers = node.putArray("numbers");
    energy.numbers().forEach(number -> number(numbers.addObject(), number));
    return node;
  }

  static void number(ObjectNode node, MissionNumber number) {
    node.put("key", number.key())
        .put("value", number.value())
        .put("mean", number.mean())
        .put("unit", number.unit())
        .put("least", number.least())
        .put("greatest", number.greatest())
        .put("whole", number.whole());
  }

  private Reply why(String at) {
    try {
      Instant time = Instant.parse(at);
      return ask(energy -> EnergyJson.of(energy.whyAt(time)));
    } catch (DateTimeParseException e) {
      throw BadInput.of("'" + at + "' is not a time", "at", "write it as 2026-10-14T08:56:00Z");
    }
  }

  private Reply recovery(String days) {
    if (!days.matches("\\d{1,4}")) {
      throw BadInput.of("'" + days + "' is no number of days", "days", "ask for 365, say");
    }
    return ask(energy -> LongLookJson.of(energy.longLook(Integer.parseInt(days))));
  }

  private Reply member(String n) {
    if (!n.matches("\\d{1,9}")) {
      throw BadInput.of("'" + n + "' is not the number of a member", "n", "count members from 1");
    }
    return ask(energy -> EnergyJson.of(energy.trace(Integer.parseInt(n))));
  }

  private Reply whatIf(String body) {
    JsonNode sent;
    try {
      sent = mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw BadInput.of("the question is not JSON: " + e.getOriginalMessage(), "what-if", "");
    }
    Map<String, String> set = overrides(sent.path("set"));
    String asker = sent.path("asker").asText("");
    try {
      return ask(energy -> EnergyJson.of(answer(asker, energy, set)));
    } catch (Overtaken e) {
      return Reply.problem(409, e.getMessage(), "what-if", "");
    }
  }

  private WhatIf answer(String asker, EnergyQuestions energy, Map<String, String> set) {
    return newest.answer(asker, () -> energy.whatIf(set)).orElseThrow(Overtaken::new);
  }

  private static final class Overtaken extends RuntimeException {
    private static final long serialVersionUID = 1;

    Overtaken() {
      super("a newer question has taken this one's place");
    }
  }

  private static Map<String, String> overrides(JsonNode set) {
    if (!set.isObject() || set.isEmpty() || set.size() > MOST_OVERRIDES) {
      throw BadInput.of(
          "a what-if needs at least one key with its value and at most " + MOST_OVERRIDES,
          "what-if",
          "send {\"set\": {\"spacecraft.battery.cell.capacity_Ah\": \"2.0\"}}");
    }
    Map<String, String> overrides = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Map.Entry<String, JsonNode> key : set.properties()) {
      if (key.getValue().isValueNode() && !key.getValue().isNull()) {
        overrides.put(key.getKey(), key.getValue().asText());
      } else {
        problems.add(new Problem("a value must be text", key.getKey(), "write it as text"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return overrides;
  }
}
