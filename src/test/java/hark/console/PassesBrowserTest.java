package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import hark.assessment.AssessmentFixture;
import java.nio.file.Files;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ribbon of all passes and the table beneath it. */
class PassesBrowserTest {
  private static BrowserSession browser;
  private static ConsoleServer server;
  private BrowserSession.Visit visit;
  private Page page;

  @BeforeAll
  static void openBrowser() throws Exception {
    Rehearsal clock = new Rehearsal(InstantSource.system(), AssessmentFixture.NOW, 1);
    server = ConsoleServer.start(FixtureModel.rehearsed(clock), ConsoleSettings.of("127.0.0.1", 0));
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
    server.close();
  }

  @BeforeEach
  void open() {
    turnTo(1280, 720);
  }

  private void turnTo(int width, int height) {
    visit = browser.open(server.address(), width, height, ColorScheme.LIGHT);
    page = visit.page();
    page.locator(".pages a[href='#passes']").click();
    page.waitForSelector(".ribbon .reed");
  }

  @AfterEach
  void close() {
    page.context().close();
  }

  @Test
  void everyPassOfTheSpanIsAReedAndARowAndTheAnswerCountsThem() {
    int reeds = page.locator(".ribbon .reed").count();
    assertEquals(reeds, page.locator(".pass-table tbody tr").count());
    assertThat(page.locator("h1")).containsText(" of " + reeds + " passes in 3 days are planned");
    assertThat(page.locator("h1")).containsText("Quay, 15 Nov 08:41Z, 84°");
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void keysComeCloserAndMoveInTime() {
    int all = page.locator(".ribbon .reed").count();
    page.keyboard().press("+");
    page.keyboard().press("+");
    int closer = page.locator(".ribbon .reed").count();
    assertTrue(closer > 0 && closer < all, closer + " of " + all);
    String before = page.locator(".overview-canvas").getAttribute("aria-valuetext");
    page.locator(".overview-canvas").focus();
    page.keyboard().press("ArrowRight");
    assertThat(page.locator(".overview-canvas")).not().hasAttribute("aria-valuetext", before);
    page.keyboard().press("-");
    page.keyboard().press("-");
    page.keyboard().press("-");
    assertThat(page.locator(".ribbon .reed")).hasCount(all);
  }

  @Test
  void aStrokeAcrossTheDaysShowsThoseDays() {
    var box = page.locator(".overview-canvas").boundingBox();
    page.mouse().move(box.x + box.width * 0.5, box.y + 12);
    page.mouse().down();
    page.mouse().move(box.x + box.width * 0.6, box.y + 12);
    page.mouse().move(box.x + box.width * 0.75, box.y + 12);
    page.mouse().up();
    String said = page.locator(".overview-canvas").getAttribute("aria-valuetext");
    assertTrue(said.startsWith("15 Nov 2") && said.contains("to 16 Nov 1"), said);
  }

  @Test
  void theTableIsSortedByWhatIsPressedAndSaysSo() {
    Locator heading = page.locator(".pass-table th:has-text('highest')");
    heading.locator("button").click();
    assertThat(heading).hasAttribute("aria-sort", "descending");
    assertThat(page.locator(".pass-table tbody tr").first()).containsText("84°");
    heading.locator("button").click();
    assertThat(heading).hasAttribute("aria-sort", "ascending");
    assertThat(page.locator(".pass-table tbody tr").first()).containsText("8°");
  }

  @Test
  void onlyWhatIsAskedForIsShown() {
    page.locator(".tools select").selectOption("Quay");
    page.locator(".tools input[type=checkbox]").check();
    int rows = page.locator(".pass-table tbody tr").count();
    assertTrue(rows > 0);
    assertEquals(rows, page.locator(".pass-table tbody tr.planned:has-text('Quay')").count());
    assertEquals(rows, page.locator(".ribbon .reed.planned").count());
  }

  @Test
  void anyPassOpens() {
    page.locator(".pass-table tbody a").nth(1).press("Enter");
    page.waitForSelector(".horizon");
    assertThat(page.locator("h1")).containsText("Quay");
    assertThat(page.locator(".pages a[aria-current=page]")).hasText("Passes");
    page.goBack();
    page.locator(".ribbon .reed").first().locator("path").first().click();
    page.waitForSelector(".horizon");
  }

  @Test
  void theTableIsTakenAwayAsCsv() throws Exception {
    Download download =
        page.waitForDownload(() -> page.locator("a[href='/api/passes.csv']").click());
    assertEquals("passes.csv", download.suggestedFilename());
    List<String> lines = Files.readAllLines(download.path());
    assertTrue(lines.get(0).startsWith("station,aos,"), lines.get(0));
    assertEquals(page.locator(".pass-table tbody tr").count() + 1, lines.size());
  }

  @Test
  void thePlanIsTakenAwayAsACalendar() throws Exception {
    Download download =
        page.waitForDownload(() -> page.locator("a[href='/api/passes.ics']").click());
    String text = Files.readString(download.path());
    int planned = page.locator(".pass-table tr.planned").count();
    assertEquals(planned, text.split("BEGIN:VEVENT", -1).length - 1);
    // RFC 5545, 3.3.5: UTC with a Z, no separators.
    assertTrue(text.contains("DTSTART:20261114T104220Z"), text);
  }

  @Test
  void hundredsOfPassesAreDrawnAtOnce() {
    Object millis =
        page.evaluate(
            "async () => { const { render } = await import('lit-html'); const { drawRibbon } = await import('/chart/ribbon.js');"
                + " const { passTable } = await import('/view/passtable.js');"
                + " const a = (await (await fetch('/api/assessment')).json()).assessment;"
                + " const windows = Array.from({length: 18}, (_, i) => a.windows.map(w => ({...w, id: w.id + i}))).flat();"
                + " const t = Date.parse(a.now), span = [t, t + 3 * 864e5], at = document.createElement('div'); document.body.append(at);"
                + " const p = {order: {column: 'heard', down: true}, filter: {}}; const start = performance.now();"
                + " render([drawRibbon({a: {...a, windows}, windows, span, width: 1200, now: t}), passTable(windows, p, {}, t)], at);"
                + " at.getBoundingClientRect(); const took = performance.now() - start;"
                + " const count = at.querySelectorAll('.reed').length; at.remove(); return [count, took]; }");
    List<?> found = (List<?>) millis;
    assertTrue(((Number) found.get(0)).intValue() > 500, found.toString());
    double generousForABusyMachineMillis = 1500;
    assertTrue(
        ((Number) found.get(1)).doubleValue() < generousForABusyMachineMillis, found.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    page.evaluate("t => document.querySelector(`input[value=${t}]`).click()", theme);
    page.waitForTimeout(300);
    assertEquals(List.of(), Axe.serious(page));
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 640})
  void aPhoneAndAScreenAtTwiceTheSizeAreNotScrolledSideways(int width) {
    page.context().close();
    turnTo(width, width == 390 ? 844 : 360);
    assertEquals(width, page.evaluate("() => document.documentElement.scrollWidth"));
  }
}
