package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.PlanDesk;
import hark.assessment.PlanEdit;
import hark.document.PlanJson;
import hark.problem.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What the page can ask about the plan of the revision now shown. */
final class PlanApi {
  private static final String MEND =
      "send {\"edits\": [{\"window\": \"its id\", \"procedure\": \"an id, or null to skip it\"}]}";

  private final ObjectMapper mapper = new ObjectMapper();
  private final Revisions revisions;

  PlanApi(Revisions revisions) {
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/plan", (values, body) -> ask(desk -> PlanJson.of(desk.view())))
        .on("POST", "/api/plan", (values, body) -> tryOut(body));
  }

  private Reply ask(Function<PlanDesk, ObjectNode> question) {
    Optional<Revisions.Revision> now = revisions.current();
    if (now.isEmpty()) {
      return Reply.problem(503, "the first answer is still being worked out", "", "wait a moment");
    }
    return now.get()
        .answer()
        .plan()
        .map(question)
        .map(node -> Reply.json(200, node.put("revision", now.get().number())))
        .orElseGet(() -> Reply.problem(404, "nothing is known of a plan", "", ""));
  }

  private Reply tryOut(String body) {
    List<PlanEdit> edits = edits(read(body));
    return ask(desk -> PlanJson.of(desk.tryOut(edits)));
  }

  private JsonNode read(String body) {
    try {
      return mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw BadInput.of("the plan is not JSON: " + e.getOriginalMessage(), "edits", MEND);
    }
  }

  private static List<PlanEdit> edits(JsonNode sent) {
    JsonNode list = sent.path("edits");
    if (!list.isArray() || list.size() > PlanDesk.MOST_EDITS) {
      throw BadInput.of(
          "a plan needs a list of at most " + PlanDesk.MOST_EDITS + " edits", "edits", MEND);
    }
    List<PlanEdit> edits = new ArrayList<>();
    for (JsonNode edit : list) {
      JsonNode procedure = edit.path("procedure");
      boolean sensible =
          edit.path("window").isTextual()
              && (procedure.isTextual() || procedure.isNull() || procedure.isMissingNode());
      if (!sensible) {
        throw BadInput.of("an edit names a window and a procedure", "edits", MEND);
      }
      edits.add(
          new PlanEdit(
              edit.path("window").asText(),
              procedure.isTextual() ? Optional.of(procedure.asText()) : Optional.empty()));
    }
    return edits;
  }
}
