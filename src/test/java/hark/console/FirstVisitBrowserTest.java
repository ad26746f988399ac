package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Somebody comes for the first time; a mission has nothing to show yet. */
class FirstVisitBrowserTest {
  private static BrowserSession browser;

  @BeforeAll
  static void openBrowser() {
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @Test
  void fiveStepsByKeyboardAndNeverAgainUnlessAskedFor() throws Exception {
    try (ConsoleServer server =
        ConsoleServer.start(new FixtureModel(true), ConsoleSettings.of("127.0.0.1", 0))) {
      Page page = browser.firstVisit(server.address(), 1280, 720).page();
      Locator guide = page.locator(".guide");
      assertThat(guide).containsText("1 of 5");
      for (int step = 2; step <= 5; step++) {
        guide.locator("button").first().press("Enter");
        assertThat(guide).containsText(step + " of 5");
        assertThat(page.locator("[data-step='" + step + "']")).isInViewport();
      }
      assertEquals(List.of(), Axe.serious(page));
      guide.locator("button").first().press("Enter");
      assertThat(guide).hasCount(0);
      page.reload();
      page.waitForSelector("svg.day");
      assertThat(guide).hasCount(0);
      page.keyboard().press("?");
      page.locator(".guide-again").click();
      assertThat(guide).containsText("1 of 5");
      page.locator(".guide button:has-text('not now')").click();
      assertThat(guide).hasCount(0);
      page.context().close();
    }
  }

  @Test
  void aMissionWithNothingYetSaysWhatToDoOnEveryPage() throws Exception {
    try (ConsoleServer server =
        ConsoleServer.start(FixtureModel.bare(), ConsoleSettings.of("127.0.0.1", 0))) {
      BrowserSession.Visit visit = browser.open(server.address(), 1280, 720, ColorScheme.LIGHT);
      Page page = visit.page();
      assertThat(page.locator("h1")).containsText("No station sees the satellite");
      assertThat(page.locator(".leading").last()).containsText("before any evidence");
      assertThat(page.locator(".columns").first()).containsText("Begin with the last pass");
      assertEquals(List.of(), Axe.serious(page));
      page.locator(".pages a[href='#passes']").click();
      assertThat(page.locator("#passes-main")).containsText("orbit.sources");
      page.navigate(server.address() + "#pass/Nowhere%202026-11-14T12:18:05Z");
      assertThat(page.locator("#pass-main h1")).containsText("not among those ahead");
      assertEquals(List.of(), Axe.serious(page));
      assertEquals(List.of(), visit.complaints());
      page.context().close();
    }
  }
}
