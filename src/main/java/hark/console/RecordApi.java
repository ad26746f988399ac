package hark.console;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.document.JournalText;
import hark.evidence.Entry;
import hark.journal.Journal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The record as a whole: whether it is unbroken, and to take away. */
final class RecordApi {
  private final ConsoleModel model;

  RecordApi(ConsoleModel model) {
    this.model = model;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/record/chain", (values, body) -> chain())
        .on(
            "GET",
            "/api/record/csv",
            (v, b) -> file("text/csv;charset=utf-8", "csv", JournalText::csv))
        .on(
            "GET",
            "/api/record/json",
            (v, b) -> file("application/json", "json", JournalText::json))
        .on(
            "GET",
            "/api/record/lines",
            (v, b) -> file("application/x-ndjson", "jsonl", JournalText::lines));
  }

  private Reply file(String type, String ending, Function<List<Entry>, String> form) {
    return Reply.file(type, "journal." + ending, form.apply(model.entries()));
  }

  private Reply chain() {
    Optional<Journal.Verification> found = model.chain();
    if (found.isEmpty()) {
      return Reply.problem(404, "this record has no chain to check", "the journal", "");
    }
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("entries", found.get().entries());
    node.putObject("head")
        .put("number", found.get().head().number())
        .put("hash", found.get().head().hash());
    node.putNull("fault");
    found.get().fault().ifPresent(fault -> node.set("fault", Reply.node(fault)));
    return Reply.json(200, node);
  }
}
