package hark.console;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Markdown as HTML that can do no harm: raw HTML in it is shown as text, addresses that could run
 * something are dropped.
 */
final class MarkdownHtml {
  private static final List<org.commonmark.Extension> TABLES = List.of(TablesExtension.create());

  private final Parser parser = Parser.builder().extensions(TABLES).build();
  private final HtmlRenderer renderer =
      HtmlRenderer.builder().extensions(TABLES).escapeHtml(true).sanitizeUrls(true).build();

  Node parse(String markdown) {
    return parser.parse(markdown);
  }

  String html(Node node) {
    return renderer.render(node);
  }

  String html(String markdown) {
    return html(parse(markdown));
  }
}
