package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.plan.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/**
 * A procedure as a checklist: cautions, forbidden-ifs, then its text in parts by heading, numbered
 * steps taken apart into what to do, what to expect, by when, and what if not.
 */
final class ProcedureSheet {
  /**
   * {@code Expect … Time-out: …}, as steps are written; the time-out may come first or not at all.
   */
  private static final Pattern TIME_OUT = Pattern.compile("(?is)\\s*\\btime-?out:\\s*(.+?)\\s*$");

  private static final Pattern EXPECT = Pattern.compile("(?i)^\\s*expect(ed)?:?\\s+");

  private final MarkdownHtml markdown = new MarkdownHtml();

  /** Writes it into an object. */
  void into(ObjectNode node, Procedure procedure) {
    node.put("id", procedure.id())
        .put("title", procedure.title())
        .put("kind", procedure.kind().name().toLowerCase(Locale.ROOT))
        .put("costHours", procedure.costHours());
    procedure.needs().forEach(node.putArray("needs")::add);
    lines(node.putArray("cautions"), procedure.cautions());
    lines(node.putArray("forbiddenIf"), procedure.forbiddenIf());
    parts(node.putArray("parts"), markdown.parse(procedure.markdown()));
  }

  private void lines(ArrayNode into, List<String> lines) {
    lines.forEach(line -> into.add(markdown.html(line).strip()));
  }

  /** Parts begin at headings of the second level and below; the first one has none. */
  private void parts(ArrayNode into, Node document) {
    Document text = new Document();
    String title = "";
    Node next;
    for (Node node = document.getFirstChild(); node != null; node = next) {
      next = node.getNext();
      boolean heading = node instanceof Heading;
      if (heading || node instanceof OrderedList) {
        title = part(into, title, text);
        text = new Document();
      }
      if (heading) {
        title = ((Heading) node).getLevel() > 1 ? words(node) : "";
      } else if (node instanceof OrderedList list) {
        steps(into.addObject().put("title", title), list);
        title = "";
      } else {
        text.appendChild(node);
      }
    }
    part(into, title, text);
  }

  /** The title that is left for what follows: a part takes it along, no part leaves it. */
  private String part(ArrayNode into, String title, Document text) {
    if (text.getFirstChild() == null) {
      return title;
    }
    into.addObject().put("title", title).put("html", markdown.html(text));
    return "";
  }

  private void steps(ObjectNode part, OrderedList list) {
    ArrayNode steps = part.putArray("steps");
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      step(steps.addObject(), item);
    }
  }

  private void step(ObjectNode step, Node item) {
    Document rest = new Document();
    List<Node> lines = new ArrayList<>();
    Node next;
    for (Node node = item.getFirstChild(); node != null; node = next) {
      next = node.getNext();
      if (node instanceof ListBlock) {
        for (Node line = node.getFirstChild(); line != null; line = line.getNext()) {
          lines.add(line);
        }
      } else {
        rest.appendChild(node);
      }
    }
    step.put("text", inner(rest));
    Document other = new Document();
    lines.forEach(line -> line(step, line, other));
    if (other.getFirstChild() != null) {
      step.put("more", markdown.html(other));
    }
  }

  /** One line under a step: what to expect with its time-out, what if not, or anything else. */
  private void line(ObjectNode step, Node line, Document other) {
    String words = words(line).strip();
    if (words.toLowerCase(Locale.ROOT).startsWith("if not")) {
      step.put("ifNot", unmarked(inner(line)));
    } else if (EXPECT.matcher(words).find()) {
      String html = inner(line);
      Matcher out = TIME_OUT.matcher(html);
      if (out.find()) {
        step.put("timeOut", out.group(1));
        html = html.substring(0, out.start());
      }
      step.put("expect", EXPECT.matcher(html).replaceFirst("").strip());
    } else {
      Node next;
      for (Node node = line.getFirstChild(); node != null; node = next) {
        next = node.getNext();
        other.appendChild(node);
      }
    }
  }

  /** The mark "If not", bold or plain, is the page's to write. */
  private static String unmarked(String html) {
    String rest =
        html.replaceFirst("(?is)^\\s*(<strong>)?\\s*if not\\s*:?\\s*(</strong>)?\\s*:?\\s*", "");
    return rest.isEmpty() ? html : rest;
  }

  /** The HTML of what a block holds, without the paragraph around it. */
  private String inner(Node block) {
    StringBuilder html = new StringBuilder();
    for (Node node = block.getFirstChild(); node != null; node = node.getNext()) {
      html.append(markdown.html(node).strip().replaceFirst("^<p>", "").replaceFirst("</p>$", ""));
      html.append(' ');
    }
    return html.toString().strip();
  }

  private static String words(Node node) {
    StringBuilder words = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }

          @Override
          public void visit(Code code) {
            words.append(code.getLiteral());
          }

          @Override
          public void visit(SoftLineBreak soft) {
            words.append(' ');
          }
        });
    return words.toString();
  }
}
