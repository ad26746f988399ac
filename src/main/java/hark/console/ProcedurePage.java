package hark.console;

import hark.assessment.Assessment.ProcedureView;
import java.util.List;

/** A procedure as a piece of HTML: what must not be forgotten first, then its text. */
final class ProcedurePage {
  private final MarkdownHtml markdown = new MarkdownHtml();

  String html(ProcedureView procedure) {
    return list("Cautions", "cautions", procedure.cautions())
        + list("Not if", "forbidden", procedure.forbiddenIf())
        + "<div class=\"steps\">"
        + markdown.html(procedure.markdown())
        + "</div>";
  }

  private String list(String title, String style, List<String> lines) {
    if (lines.isEmpty()) {
      return "";
    }
    StringBuilder out = new StringBuilder();
    out.append("<div class=\"").append(style).append("\"><h4>").append(title).append("</h4><ul>");
    for (String line : lines) {
      out.append("<li>").append(markdown.html(line).trim()).append("</li>");
    }
    return out.append("</ul></div>").toString();
  }
}
