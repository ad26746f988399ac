package hark.console;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment.ProcedureView;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProcedurePageTest {
  @Test
  void cautionsComeBeforeTheSteps() {
    String html = html("## Steps\n\n1. Send.\n", "Only under a licence.");
    assertTrue(html.indexOf("Only under a licence.") < html.indexOf("Steps"), html);
    assertTrue(html.contains("<ol>"), html);
  }

  @Test
  void rawHtmlIsShownAsText() {
    String html = html("<script>alert(1)</script>\n\n<img src=x onerror=y> words", "<b>bold</b>");
    assertFalse(html.contains("<script"), html);
    assertFalse(html.contains("<img"), html);
    assertFalse(html.contains("<b>"), html);
    assertTrue(html.contains("&lt;script&gt;"), html);
  }

  @Test
  void addressesThatRunSomethingAreDropped() {
    String html = html("[press](javascript:alert(1))", "none");
    assertFalse(html.contains("javascript:"), html);
  }

  private static String html(String markdown, String caution) {
    return new ProcedurePage()
        .html(
            new ProcedureView(
                "reset", "blind reset", "command", List.of(caution), List.of(), markdown));
  }
}
