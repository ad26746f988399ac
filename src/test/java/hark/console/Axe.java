package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Set;

/** Asks axe-core about a page, everything on it opened. */
final class Axe {
  /** Longer than any figure takes to settle after it has changed. */
  private static final int SETTLED_MILLIS = 1800;

  private Axe() {}

  static void findsNothingSerious(Page page, String theme) {
    page.evaluate("t => document.querySelector(`input[value=${t}]`).click()", theme);
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(SETTLED_MILLIS);
    assertEquals(List.of(), serious(page));
  }

  /** What is serious about a page as it stands, in words. */
  static List<String> serious(Page page) {
    return new AxeBuilder(page)
        .analyze().getViolations().stream()
            .filter(rule -> Set.of("serious", "critical").contains(rule.getImpact()))
            .map(Axe::words)
            .toList();
  }

  private static String words(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + " at "
        + rule.getNodes().stream().map(node -> node.getTarget().toString()).limit(5).toList();
  }

  static void isNotScrolledSideways(Page page) {
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(500);
    assertEquals(
        page.viewportSize().width,
        page.evaluate("() => document.documentElement.scrollWidth"),
        "width of the page");
  }
}
