package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import hark.assessment.Assessment.ProcedureView;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page can ask for and send. */
final class Api {
  private static final String JOURNAL = "/api/journal";

  private final ObjectMapper mapper = new ObjectMapper();
  private final ProcedurePage procedures = new ProcedurePage();
  private final ConsoleModel model;
  private final Revisions revisions;
  private final Reckonings reckonings = new Reckonings();
  private final Runnable clockMoved;

  /**
   * @param clockMoved told when a rehearsal's clock was held, let go or moved
   */
  Api(ConsoleModel model, Revisions revisions, Runnable clockMoved) {
    this.model = model;
    this.revisions = revisions;
    this.clockMoved = clockMoved;
  }

  /** Stops what is still being worked out for somebody. */
  void close() {
    reckonings.close();
  }

  Routes routes() {
    Routes routes = new EnergyApi(revisions).into(new Routes());
    new RecordApi(model).into(routes);
    new RunbookApi(model, revisions).into(routes);
    new SetUpApi(model, revisions, reckonings).into(routes);
    new PassApi(model, revisions).into(routes);
    new ClockApi(model, clockMoved).into(routes);
    new PlanApi(revisions).into(routes);
    new OrbitApi(model, revisions).into(routes);
    new CaseApi(revisions).into(routes);
    return routes
        .on("GET", "/api/assessment", (path, body) -> assessment())
        .on("GET", JOURNAL, (path, body) -> Reply.json(200, PageJson.journal(model.entries())))
        .on("POST", JOURNAL, (path, body) -> append(body))
        .on("GET", "/api/procedures/{id}", (path, body) -> procedure(path.get("id")))
        .on("GET", "/api/windows/{id}/sky", (path, body) -> sky(path.get("id")));
  }

  private Reply assessment() {
    return revisions
        .current()
        .map(now -> Reply.json(200, PageJson.page(model, now, revisions.isWorking())))
        .orElseGet(
            () ->
                Reply.problem(
                    503, "the first answer is still being worked out", "", "wait a moment"));
  }

  private Reply append(String body) {
    NewEntry entry = parse(body);
    Optional<Integer> earlier = entry.token().flatMap(model::delivered);
    int number = earlier.orElseGet(() -> model.append(entry));
    if (earlier.isEmpty()) {
      revisions.refresh();
    }
    int status = earlier.isPresent() ? 200 : 201;
    return Reply.json(status, JsonNodeFactory.instance.objectNode().put("number", number));
  }

  private Reply procedure(String id) {
    Optional<ProcedureView> found =
        revisions.current().stream()
            .flatMap(now -> now.assessment().procedures().stream())
            .filter(procedure -> procedure.id().equals(id))
            .findFirst();
    return found
        .map(procedure -> Reply.html(procedures.html(procedure)))
        .orElseGet(() -> Reply.problem(404, "there is no procedure '" + id + "'", "", ""));
  }

  private Reply sky(String windowId) {
    return revisions
        .window(windowId)
        .flatMap(model::sky)
        .map(sky -> Reply.json(200, PageJson.sky(sky)))
        .orElseGet(() -> Reply.problem(404, "there is no window '" + windowId + "'", "", ""));
  }

  private NewEntry parse(String body) {
    JsonNode sent;
    try {
      sent = mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw BadInput.of("the entry is not JSON: " + e.getOriginalMessage(), JOURNAL, "");
    }
    List<Problem> problems = new ArrayList<>();
    JsonNode kind = sent.path("kind");
    JsonNode keys = sent.path("keys");
    if (!kind.isTextual() || !keys.isObject()) {
      throw BadInput.of(
          "an entry needs a kind in words and its keys",
          JOURNAL,
          "send {\"kind\": \"note\", \"keys\": {\"text\": \"…\"}}");
    }
    Map<String, String> given = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> key : keys.properties()) {
      if (key.getValue().isValueNode() && !key.getValue().isNull()) {
        given.put(key.getKey(), key.getValue().asText());
      } else {
        problems.add(new Problem("a value must be text", key.getKey(), "write it as text"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    Optional<String> token = Optional.ofNullable(sent.get("token")).map(JsonNode::asText);
    return new NewEntry(kind.asText(), given, token);
  }
}
