package hark.console;

import hark.assessment.Assessment.ProcedureView;
import java.util.List;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A procedure as a piece of HTML: what must not be forgotten first, then its text. Raw HTML in the
 * Markdown is shown as text, and addresses that could run something are dropped.
 */
final class ProcedurePage {
  private final Parser parser = Parser.builder().build();
  private final HtmlRenderer renderer =
      HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();

  String html(ProcedureView procedure) {
    return list("Cautions", "cautions", procedure.cautions())
        + list("Not if", "forbidden", procedure.forbiddenIf())
        + "<div class=\"steps\">"
        + renderer.render(parser.parse(procedure.markdown()))
        + "</div>";
  }

  private String list(String title, String style, List<String> lines) {
    if (lines.isEmpty()) {
      return "";
    }
    StringBuilder out = new StringBuilder();
    out.append("<div class=\"").append(style).append("\"><h4>").append(title).append("</h4><ul>");
    for (String line : lines) {
      out.append("<li>").append(renderer.render(parser.parse(line)).trim()).append("</li>");
    }
    return out.append("</ul></div>").toString();
  }
}
