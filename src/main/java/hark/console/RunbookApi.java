package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.Assessment;
import hark.document.MissionFacts;
import hark.document.RunbookEntry;
import hark.evidence.EvidenceBook;
import java.util.Optional;
import java.util.function.BiFunction;

/** The mission's procedures as checklists, and the entry drafted from the present assessment. */
final class RunbookApi {
  private final ConsoleModel model;
  private final Revisions revisions;
  private final ProcedureSheet sheet = new ProcedureSheet();
  private final MarkdownHtml markdown = new MarkdownHtml();

  RunbookApi(ConsoleModel model, Revisions revisions) {
    this.model = model;
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/runbook", (values, body) -> procedures())
        .on("GET", "/api/runbook-entry", (values, body) -> entry(this::shown))
        .on("GET", "/api/runbook-entry/file", (values, body) -> entry(RunbookApi::kept));
  }

  private Reply procedures() {
    if (model.papers().isEmpty()) {
      return nothingKnown();
    }
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ArrayNode list = node.putArray("procedures");
    model
        .papers()
        .get()
        .mission()
        .procedures()
        .forEach(procedure -> sheet.into(list.addObject(), procedure));
    return Reply.json(200, node);
  }

  private Reply entry(BiFunction<String, String, Reply> form) {
    Optional<Revisions.Revision> now = revisions.current();
    if (now.isEmpty()) {
      return Reply.problem(503, "the first answer is still being worked out", "", "wait a moment");
    }
    if (model.papers().isEmpty()) {
      return nothingKnown();
    }
    Assessment assessment = now.get().assessment();
    String text =
        RunbookEntry.of(
            assessment,
            MissionFacts.of(model.papers().get().mission()),
            EvidenceBook.effective(now.get().entries(), assessment.now()));
    return form.apply(RunbookEntry.id(assessment), text);
  }

  private Reply shown(String id, String text) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    return Reply.json(200, node.put("id", id).put("html", markdown.html(text)));
  }

  private static Reply kept(String id, String text) {
    return Reply.file("text/markdown;charset=utf-8", id + ".md", text);
  }

  private static Reply nothingKnown() {
    return Reply.problem(404, "nothing is known of the mission's files", "runbook", "");
  }
}
