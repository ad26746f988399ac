package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.ProcedureView;
import hark.document.PassCalendar;
import hark.document.PlanEvents;
import hark.document.WindowTable;
import java.util.Optional;
import java.util.function.Function;

/** What the page asks to sit through a pass: where to point, what to do. */
final class PassApi {
  private final ConsoleModel model;
  private final Revisions revisions;
  private final ProcedureSteps steps = new ProcedureSteps();

  PassApi(ConsoleModel model, Revisions revisions) {
    this.model = model;
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/windows/{id}/pass", (path, body) -> pass(path.get("id")))
        .on("GET", "/api/passes.csv", (path, body) -> file("text/csv", "csv", WindowTable::csv))
        .on(
            "GET",
            "/api/passes.ics",
            (path, body) -> file("text/calendar", "ics", PassApi::calendar))
        .on("GET", "/api/procedures/{id}/steps", (path, body) -> steps(path.get("id")));
  }

  private Reply pass(String id) {
    return revisions
        .window(id)
        .flatMap(model::pass)
        .map(view -> Reply.json(200, PassJson.of(view)))
        .orElseGet(
            () ->
                Reply.problem(
                    404,
                    "there is no window '" + id + "' ahead",
                    id,
                    "it may be over; passes that are over stand in the record"));
  }

  private Reply file(String type, String ending, Function<Assessment, String> form) {
    return revisions
        .current()
        .map(
            now ->
                Reply.file(
                    type + ";charset=utf-8", "passes." + ending, form.apply(now.assessment())))
        .orElseGet(() -> Reply.problem(503, "the first answer is not there yet", "", ""));
  }

  private static String calendar(Assessment assessment) {
    return PassCalendar.of(PlanEvents.of(assessment), assessment.now());
  }

  private Reply steps(String id) {
    Optional<ProcedureView> found =
        revisions.current().stream()
            .flatMap(now -> now.assessment().procedures().stream())
            .filter(procedure -> procedure.id().equals(id))
            .findFirst();
    return found
        .map(procedure -> Reply.json(200, steps.of(procedure)))
        .orElseGet(() -> Reply.problem(404, "there is no procedure '" + id + "'", "", ""));
  }
}
