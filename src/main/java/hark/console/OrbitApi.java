package hark.console;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** What the page can ask about the orbits. */
final class OrbitApi {
  private final ConsoleModel model;
  private final Revisions revisions;

  /** The last answer and the revision it was worked out for. */
  private Optional<ObjectNode> last = Optional.empty();

  OrbitApi(ConsoleModel model, Revisions revisions) {
    this.model = model;
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes.on("GET", "/api/orbit", (values, body) -> orbit());
  }

  private synchronized Reply orbit() {
    Optional<Revisions.Revision> now = revisions.current();
    if (now.isEmpty()) {
      return Reply.problem(503, "the first answer is still being worked out", "", "wait a moment");
    }
    int number = now.get().number();
    if (last.map(node -> node.get("revision").asInt() != number).orElse(true)) {
      ObjectNode view =
          model
              .orbit()
              .map(orbit -> orbit.view(now.get().assessment().now()))
              .orElseGet(OrbitApi::nothing);
      last = Optional.of(view.put("revision", number));
    }
    return Reply.json(200, last.get());
  }

  /** For a console that knows no files: no objects, no curves. */
  private static ObjectNode nothing() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.putArray("objects");
    node.putArray("curves");
    node.putArray("problems");
    return node;
  }
}
