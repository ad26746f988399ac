package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.Assessment.ProcedureView;
import java.util.List;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * A procedure taken apart for ticking off: cautions, then its sections; the items of a numbered
 * list are steps, everything else is text. Raw HTML in the Markdown is shown as text, and addresses
 * that could run something are dropped.
 */
final class ProcedureSteps {
  private final Parser parser = Parser.builder().build();
  private final HtmlRenderer html =
      HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();
  private final TextContentRenderer words = TextContentRenderer.builder().build();

  /**
   * {@code {id, title, cautions, forbiddenIf, sections: [{title, html, steps: [{html, detail}]}]}}.
   */
  ObjectNode of(ProcedureView procedure) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("id", procedure.id()).put("title", procedure.title()).put("kind", procedure.kind());
    lines(node.putArray("cautions"), procedure.cautions());
    lines(node.putArray("forbiddenIf"), procedure.forbiddenIf());
    ArrayNode sections = node.putArray("sections");
    ObjectNode section = null;
    for (Node each = parser.parse(procedure.markdown()).getFirstChild();
        each != null;
        each = each.getNext()) {
      if (each instanceof Heading heading) {
        section = heading.getLevel() == 1 ? null : section(sections, words.render(heading));
      } else {
        section = section == null ? section(sections, "") : section;
        put(section, each);
      }
    }
    return node;
  }

  private static ObjectNode section(ArrayNode into, String title) {
    ObjectNode section = into.addObject().put("title", title.trim()).put("html", "");
    section.putArray("steps");
    return section;
  }

  private void put(ObjectNode section, Node node) {
    if (!(node instanceof OrderedList list)) {
      section.put("html", section.get("html").asText() + html.render(node));
      return;
    }
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      if (item instanceof ListItem) {
        step(section.withArray("steps").addObject(), item);
      }
    }
  }

  /** The first paragraph says what to do, the rest what to expect and what if not. */
  private void step(ObjectNode step, Node item) {
    Node first = item.getFirstChild();
    StringBuilder detail = new StringBuilder();
    boolean told = first instanceof Paragraph;
    for (Node each = told ? first.getNext() : first; each != null; each = each.getNext()) {
      detail.append(html.render(each));
    }
    step.put("html", told ? inline(html.render(first)) : "").put("detail", detail.toString());
  }

  private void lines(ArrayNode into, List<String> markdown) {
    markdown.forEach(line -> into.add(inline(html.render(parser.parse(line)))));
  }

  private static String inline(String paragraph) {
    String text = paragraph.trim();
    return text.startsWith("<p>") && text.endsWith("</p>") && text.indexOf("<p>", 1) < 0
        ? text.substring(3, text.length() - 4)
        : text;
  }
}
