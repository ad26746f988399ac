package hark.console;

import hark.assessment.ReviewCase;
import hark.document.CaseJson;
import hark.document.CasePage;
import java.util.Optional;
import java.util.function.BiFunction;

/** The case for going on of the revision now shown: for the page, and as a file for a board. */
final class CaseApi {
  private final Revisions revisions;

  CaseApi(Revisions revisions) {
    this.revisions = revisions;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", "/api/case", (values, body) -> ask(CaseApi::shown))
        .on("GET", "/api/case/file", (values, body) -> ask(CaseApi::kept));
  }

  private Reply ask(BiFunction<ReviewCase, Revisions.Revision, Reply> form) {
    Optional<Revisions.Revision> now = revisions.current();
    if (now.isEmpty()) {
      return Reply.problem(503, "the first answer is still being worked out", "", "wait a moment");
    }
    return now.get()
        .answer()
        .goingOn()
        .map(desk -> form.apply(desk.get(), now.get()))
        .orElseGet(() -> Reply.problem(404, "nobody can make the case for going on", "", ""));
  }

  private static Reply shown(ReviewCase made, Revisions.Revision now) {
    return Reply.json(200, CaseJson.of(made).put("revision", now.number()));
  }

  private static Reply kept(ReviewCase made, Revisions.Revision now) {
    return Reply.file(
        "text/markdown;charset=utf-8", CasePage.fileName(made), CasePage.markdown(made));
  }
}
