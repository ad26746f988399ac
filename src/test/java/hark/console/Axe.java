package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.playwright.AxeBuilder;
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
    List<String> serious =
        new AxeBuilder(page)
            .analyze().getViolations().stream()
                .filter(rule -> Set.of("serious", "critical").contains(rule.getImpact()))
                .map(PageBrowserTest::words)
                .toList();
    assertEquals(List.of(), serious);
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
