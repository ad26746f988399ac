package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What stands around every page: names of pages, keys, words explained. */
class ShellBrowserTest {
  private static BrowserSession browser;
  private static ConsoleServer server;
  private BrowserSession.Visit visit;
  private Page page;

  @BeforeAll
  static void openBrowser() throws Exception {
    server = ConsoleServer.start(new FixtureModel(true), ConsoleSettings.of("127.0.0.1", 0));
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
    server.close();
  }

  @BeforeEach
  void open() {
    visit = browser.open(server.address(), 1280, 720, ColorScheme.LIGHT);
    page = visit.page();
  }

  @AfterEach
  void close() {
    page.context().close();
  }

  @Test
  void everyPageNamedIsThereAndItsNameIsMarkedWhileItIsOpen() {
    int names = page.locator(".pages a").count();
    assertTrue(names >= 2);
    for (int i = 0; i < names; i++) {
      Locator name = page.locator(".pages a").nth(i);
      name.click();
      assertThat(name).hasAttribute("aria-current", "page");
      assertThat(page.locator(".pages a[aria-current=page]")).hasCount(1);
      assertThat(page.locator("main h1").first()).isVisible();
      assertThat(page.locator("main")).hasCount(1);
      assertEquals("600", name.evaluate("e => getComputedStyle(e).fontWeight"));
    }
    // The invented mission knows no files and no plan to ask about; its pages say so.
    assertEquals(
        List.of(),
        visit.complaints().stream().filter(said -> !said.contains("404 (Not Found)")).toList());
  }

  @Test
  void aDigitTurnsThePageAndTheSheetOfKeysTellsWhich() {
    page.keyboard().press("?");
    Locator sheet = page.locator("#keys");
    assertThat(sheet).isVisible();
    assertThat(sheet.locator(".keys-list").first()).containsText("nothing heard");
    assertThat(sheet).containsText("Energy");
    page.keyboard().press("3");
    assertThat(page.locator("#energy-main")).hasCount(0);
    page.keyboard().press("Escape");
    assertThat(sheet).isHidden();
    page.keyboard().press("3");
    assertThat(page.locator("#energy-main")).isVisible();
    assertTrue(page.title().contains("energy"), page.title());
    page.keyboard().press("?");
    assertThat(sheet.locator(".keys-list").first()).containsText("orbit to orbit");
  }

  @Test
  void everyKeyCanBeTurnedOff() {
    page.locator(".ask-keys").click();
    page.locator("#keys input").uncheck();
    page.keyboard().press("Escape");
    for (String key : List.of("3", "?", "h")) {
      page.keyboard().press(key);
    }
    assertThat(page.locator("#energy-main")).hasCount(0);
    assertThat(page.locator("#keys")).isHidden();
    assertThat(page.locator("input[value=heard]")).not().isChecked();
    page.reload();
    page.waitForSelector("svg.day");
    page.keyboard().press("3");
    assertThat(page.locator("#energy-main")).hasCount(0);
  }

  @Test
  void aMarkedWordExplainsItselfByMouseAndByKeyboard() {
    Locator word = page.locator(".facts .term").first();
    Locator gloss = page.locator(".gloss");
    assertThat(gloss).isHidden();
    word.hover();
    assertThat(gloss).isVisible();
    assertThat(gloss).containsText("chance that at least one burst");
    page.keyboard().press("Escape");
    assertThat(gloss).isHidden();
    word.focus();
    assertThat(gloss).isVisible();
    String described = word.getAttribute("aria-describedby");
    String said = page.locator("#" + described).evaluate("e => e.textContent").toString();
    assertTrue(gloss.textContent().endsWith(said), said);
  }

  @Test
  void aPageOnceForeseenOpensWithoutTheServer() {
    page.waitForTimeout(1500);
    page.context().setOffline(true);
    page.keyboard().press("3");
    assertThat(page.locator("#energy-main")).isVisible();
    page.context().setOffline(false);
  }
}
