package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What the page can ask about the mission's files, and what it may try on copies of them. */
final class SetUpApi {
  private static final String HERE = "set-up";

  /** Keys set in one question. */
  private static final int MOST_SET = 100;

  private final ObjectMapper mapper = new ObjectMapper();
  private final ConsoleModel model;
  private final Revisions revisions;
  private final Reckonings reckonings;

  SetUpApi(ConsoleModel model, Revisions revisions, Reckonings reckonings) {
    this.model = model;
    this.revisions = revisions;
    this.reckonings = reckonings;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/set-up", (values, body) -> ask(SetUpJson::whole))
        .on("GET", "/api/set-up/tree", (values, body) -> ask(SetUpApi::tree))
        .on("POST", "/api/set-up/check", (values, body) -> ask(papers -> check(papers, read(body))))
        .on("POST", "/api/set-up/reckon", (values, body) -> reckon(body))
        .on("GET", "/api/set-up/reckon/{n}", (values, body) -> state(number(values)))
        .on("POST", "/api/set-up/reckon/{n}/stop", (values, body) -> stop(number(values)));
  }

  private Reply ask(Function<MissionPapers, ObjectNode> question) {
    return model
        .papers()
        .map(papers -> Reply.json(200, question.apply(papers)))
        .orElseGet(SetUpApi::nothingKnown);
  }

  private static Reply nothingKnown() {
    return Reply.problem(404, "nothing is known of the mission's files", HERE, "");
  }

  private static ObjectNode tree(MissionPapers papers) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    Optional<List<Problem>> found = papers.treeWarnings();
    SetUpJson.problems(node.putArray("warnings"), found.orElse(List.of()));
    return node.put("done", found.isPresent());
  }

  /** The texts with every key set that is asked for, and what the reader says of them. */
  private static ObjectNode check(MissionPapers papers, Question asked) {
    Map<String, String> texts = new LinkedHashMap<>(asked.texts);
    for (Set one : asked.set) {
      texts.put(
          one.file, MissionPapers.set(one.file, text(papers, texts, one), one.key, one.value));
    }
    return SetUpJson.checked(papers, texts);
  }

  private static String text(MissionPapers papers, Map<String, String> texts, Set one) {
    String there = texts.getOrDefault(one.file, papers.texts().get(one.file));
    if (there == null) {
      throw BadInput.of("'" + one.file + "' is no file to edit", HERE, "name mission.yaml");
    }
    return there;
  }

  private Reply reckon(String body) {
    Question asked = read(body);
    Optional<Revisions.Revision> now = revisions.current();
    Optional<MissionPapers> papers = model.papers();
    if (papers.isEmpty()) {
      return nothingKnown();
    }
    if (now.isEmpty()) {
      return Reply.problem(
          503, "the first answer is still being worked out", HERE, "wait a moment");
    }
    List<Problem> problems = papers.get().check(asked.texts).problems();
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    Revisions.Revision from = now.get();
    int number =
        reckonings.start(
            () -> papers.get().assess(asked.texts, from.entries(), from.assessment().now()));
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("number", number).put("revision", from.number());
    return Reply.json(202, node.put("usualSeconds", revisions.lastSeconds()));
  }

  private Reply state(int number) {
    return reckonings
        .state(number)
        .map(state -> Reply.json(200, SetUpJson.state(state)))
        .orElseGet(() -> Reply.problem(404, "nothing of that number is worked out", HERE, ""));
  }

  private Reply stop(int number) {
    reckonings.stop(number);
    return state(number);
  }

  private static int number(Map<String, String> values) {
    String n = values.getOrDefault("n", "");
    if (!n.matches("\\d{1,9}")) {
      throw BadInput.of("'" + n + "' is no number of a reckoning", HERE, "take the one given");
    }
    return Integer.parseInt(n);
  }

  private record Set(String file, String key, String value) {}

  private record Question(Map<String, String> texts, List<Set> set) {}

  private Question read(String body) {
    JsonNode sent;
    try {
      sent = mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw BadInput.of("the question is not JSON: " + e.getOriginalMessage(), HERE, "");
    }
    if (!sent.isObject()) {
      throw BadInput.of("the question is no object", HERE, "send {\"texts\": {…}, \"set\": []}");
    }
    Map<String, String> texts = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> file : sent.path("texts").properties()) {
      if (!MissionPapers.EDITABLE.contains(file.getKey()) || !file.getValue().isTextual()) {
        throw BadInput.of(
            "'" + file.getKey() + "' is no file to edit, or not a text",
            HERE,
            "send texts of " + String.join(", ", MissionPapers.EDITABLE));
      }
      texts.put(file.getKey(), file.getValue().asText());
    }
    List<Set> set = sent.path("set").valueStream().map(SetUpApi::set).limit(MOST_SET + 1L).toList();
    if (set.size() > MOST_SET) {
      throw BadInput.of("more than " + MOST_SET + " keys at once", HERE, "set fewer");
    }
    return new Question(texts, set);
  }

  private static Set set(JsonNode one) {
    return new Set(
        one.path("file").asText(""), one.path("key").asText(""), one.path("value").asText(""));
  }
}
