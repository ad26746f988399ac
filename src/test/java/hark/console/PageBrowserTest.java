package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageBrowserTest {
  private static ConsoleServer server;
  private static BrowserSession browser;

  @BeforeAll
  static void open() throws Exception {
    server = ConsoleServer.start(new FixtureModel(true), ConsoleSettings.of("127.0.0.1", 0));
    browser = new BrowserSession();
  }

  @AfterAll
  static void close() {
    browser.close();
    server.close();
  }

  @Test
  void theAnswerComesFirstAndIsTheLargest() {
    Page page = visit(1280, 720).page();
    Object largest =
        page.evaluate(
            "() => [...document.querySelectorAll('#page *')]"
                + ".filter(e => e.childNodes.length && e.textContent.trim())"
                + ".map(e => [parseFloat(getComputedStyle(e).fontSize), e])"
                + ".sort((x, y) => y[0] - x[0])[0][1].closest('h1') !== null");
    assertEquals(true, largest);
    assertEquals("H1", page.evaluate("() => document.querySelector('h1, h2, h3, h4').tagName"));
    double bottom =
        ((Number)
                page.evaluate(
                    "() => document.querySelector('.facts').getBoundingClientRect().bottom"))
            .doubleValue();
    assertTrue(bottom < 480, "answer, reasons and facts stand above the fold, not at " + bottom);
    assertEquals(1, page.locator("h1").count());
  }

  @Test
  void nothingIsAskedOfAnyOtherHostAndNothingIsComplainedOf() {
    BrowserSession.Visit visit = visit(1280, 900);
    Page page = visit.page();
    page.locator(".windows details summary").first().click();
    page.locator(".procedure summary").first().click();
    page.locator(".steps").first().waitFor();
    assertTrue(visit.requests().size() > 20, "modules were asked for");
    String own = server.address().toString();
    assertEquals(List.of(), visit.requests().stream().filter(r -> !r.startsWith(own)).toList());
    assertEquals(List.of(), visit.complaints());
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    Page page = visit(1280, 900).page();
    page.evaluate("t => document.querySelector(`input[value=${t}]`).click()", theme);
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.locator(".steps").first().waitFor();
    page.waitForTimeout(1800);
    assertEquals(List.of(), Axe.serious(page));
  }

  @Test
  void theLightFollowsTheSystemUntilAPersonChooses() {
    Page page = browser.open(server.address(), 1280, 900, ColorScheme.DARK).page();
    assertEquals("dark", theme(page));
    Object dark = paper(page);
    page.locator(".themes label").nth(2).click();
    assertEquals("night", theme(page));
    assertTrue(!dark.equals(paper(page)), "the paper changes with the light");
    page.reload();
    page.waitForSelector("svg.day");
    assertEquals("night", theme(page));
    assertTrue(page.locator("input[value=night]").isChecked());
  }

  @Test
  void aPhoneIsNotScrolledSideways() {
    Page page = visit(390, 844).page();
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(500);
    assertEquals(390, page.evaluate("() => document.documentElement.scrollWidth"));
  }

  @Test
  void aReedChosenByKeyboardOpensItsOptionsWithCautionsFirst() {
    Page page = visit(1280, 900).page();
    page.locator(".reed.planned").first().focus();
    page.keyboard().press("Enter");
    assertEquals("true", page.locator(".reed.selected").getAttribute("aria-pressed"));
    page.locator(".windows details.selected[open]").waitFor();
    page.locator(".options li:has(h4:text-is('blind reset')) .procedure summary").first().click();
    page.locator(".options .cautions").first().waitFor();
    assertEquals(
        true,
        page.evaluate(
            "() => { const c = document.querySelector('.cautions'); const s = c.parentElement.querySelector('.steps');"
                + " return !!(c.compareDocumentPosition(s) & Node.DOCUMENT_POSITION_FOLLOWING); }"));
  }

  @Test
  void anInseparableGroupIsOneRowThatSaysSoAndOpens() {
    Page page = visit(1280, 900).page();
    var group =
        page.locator(".fits > .rows > li", new Page.LocatorOptions().setHasText("silent for good"));
    assertEquals(1, group.count());
    String said = group.locator("summary").first().innerText();
    assertTrue(said.contains("(3 causes)") && said.contains("spacecraft lost"), said);
    group.locator("summary").first().click();
    assertEquals(3, group.locator(".member").count());
    assertTrue(group.locator(".separators").innerText().contains("radar or telescope"));
  }

  @Test
  void aCauseIsOneKeyAwayFromWhatWouldSettleIt() {
    Page page = visit(1280, 900).page();
    var cause = page.locator(".fits > .rows > li:has-text('computer hung')");
    cause.locator("summary").first().focus();
    page.keyboard().press("Enter");
    String said = cause.locator(".inside").innerText();
    assertTrue(said.contains("a loss of power on the bus"), said);
    assertTrue(said.contains("blind reset"), said);
    assertTrue(said.contains("With half that start"), said);
    assertEquals(1, cause.locator(".movement .band").count());
  }

  @Test
  void storiesThatExcludeEachOtherMakeAHundred() {
    Page page = visit(1280, 900).page();
    page.locator(".stories summary").click();
    Object sum =
        page.evaluate(
            "() => [...document.querySelectorAll('.stories tbody tr')]"
                + ".map(r => parseFloat(r.querySelectorAll('td')[1].textContent)).reduce((a, b) => a + b)");
    double roundedRows = 2.5;
    assertEquals(100, ((Number) sum).doubleValue(), roundedRows);
    assertTrue(page.locator(".stories").innerText().contains("three or more things at once"));
  }

  @Test
  void whatMovedWhatIsATableWithCausesAcross() {
    Page page = visit(1280, 900).page();
    page.locator(".moved-table summary").click();
    var row = page.locator(".moved-table tbody tr:has-text('battery 7.05 V')");
    assertTrue(row.innerText().contains("+1.6"), row.innerText());
    assertEquals(6, page.locator(".moved-table thead th").count() - 1);
  }

  @Test
  void returnsAreFollowedFarAheadWhenSomebodyAsks() {
    Page page = visit(1280, 900).page();
    assertEquals(0, page.locator("text=full-sun season").count());
    page.locator(".far button").press("Enter");
    page.waitForSelector(".far:has-text('full-sun season')");
    String said = page.locator(".far").innerText();
    assertTrue(said.contains("with computer hung, eight in ten send again"), said);
    assertTrue(said.contains("Never: transmitter dead."), said);
  }

  @Test
  void lookingBackShowsWhatBecameOfEachPass() {
    Page page = visit(1280, 900).page();
    page.locator(".turn button").first().click();
    assertEquals(2, page.locator(".past > g").count());
    assertEquals(1, page.locator(".past .nothing").count());
    assertTrue(page.locator(".axis .legend").innerText().contains("ring"));
  }

  @Test
  void timesAreUtcAndSaySo() {
    Page page = visit(1280, 900).page();
    List<String> shown = page.locator(".ticks text:not(.date), .windows .when b").allTextContents();
    assertTrue(shown.size() > 8);
    shown.forEach(text -> assertTrue(text.matches("\\d\\d:\\d\\dZ"), text));
  }

  @Test
  void reducedMotionIsRespected() {
    Page page = visit(1280, 900).page();
    page.emulateMedia(
        new Page.EmulateMediaOptions()
            .setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
    assertEquals(
        "0s",
        page.evaluate(
            "() => getComputedStyle(document.querySelector('.present')).transitionDuration"));
  }

  private static BrowserSession.Visit visit(int width, int height) {
    return browser.open(server.address(), width, height, ColorScheme.LIGHT);
  }

  private static Object theme(Page page) {
    return page.evaluate("() => document.documentElement.dataset.theme");
  }

  private static Object paper(Page page) {
    return page.evaluate("() => getComputedStyle(document.documentElement).backgroundColor");
  }
}
