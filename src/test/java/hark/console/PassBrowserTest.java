package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import hark.evidence.Entry;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pass sat through in the browser, also while the server is away. */
class PassBrowserTest {
  private static final String WINDOW = "Fen Hill 2026-11-14T10:42:20Z";

  /** Two minutes into a pass of nine. */
  private static final Instant DURING = Instant.parse("2026-11-14T10:44:20Z");

  private static BrowserSession browser;
  private FixtureModel model;
  private ConsoleServer server;
  private BrowserSession.Visit visit;
  private Page page;

  @BeforeAll
  static void openBrowser() {
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @BeforeEach
  void open() throws Exception {
    model = FixtureModel.rehearsed(new Rehearsal(InstantSource.system(), DURING, 1));
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", 0));
    sit(1280, 720);
  }

  private void sit(int width, int height) {
    visit = browser.open(server.address(), width, height, ColorScheme.LIGHT);
    page = visit.page();
    page.navigate(server.address() + "#pass/" + WINDOW.replace(" ", "%20"));
    page.waitForSelector(".horizon .dot");
    page.waitForSelector(".step");
  }

  @AfterEach
  void close() {
    page.context().close();
    server.close();
  }

  @Test
  void theLineTicksAndTheDotMovesEachSecond() {
    String receive = live("receive");
    String dot = page.locator(".horizon .dot").getAttribute("cx");
    assertTrue(receive.matches("437\\.25\\d.\\d\\d.MHz"), receive);
    page.waitForTimeout(2600);
    assertNotEquals(receive, live("receive"));
    assertNotEquals(dot, page.locator(".horizon .dot").getAttribute("cx"));
    assertThat(page.locator("h1")).containsText("left, still rising");
    assertTrue(page.locator(".bursts .due").count() > 15);
  }

  @Test
  void whatIsWrittenWhileTheServerIsAwayIsSentOnceWhenItIsBack() throws Exception {
    int port = server.address().getPort();
    int before = model.entries().size();
    server.close();
    assertThat(page.locator(".without")).containsText("does not answer");
    String left = page.locator("h1").innerText();
    page.keyboard().press("h");
    page.locator("#pass-level").fill("11.5");
    assertTrue(page.locator("#pass-frequency").inputValue().startsWith("437.25"));
    page.keyboard().press("Enter");
    assertThat(page.locator(".outbox").first()).containsText("one entry waits here");
    page.keyboard().press("x");
    page.locator("#pass-why").fill("wind over the limit");
    page.keyboard().press("Enter");
    assertThat(page.locator(".outbox").first()).containsText("2 entries wait here");
    page.waitForTimeout(1500);
    assertNotEquals(left, page.locator("h1").innerText(), "the page goes on ticking");
    assertEquals(before, model.entries().size());
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", port));
    assertThat(page.locator(".outbox").first()).isEmpty();
    assertThat(page.locator(".without")).hasCount(0);
    page.waitForTimeout(3500);
    List<Entry> written = model.entries().subList(before, model.entries().size());
    assertEquals(
        List.of("heard", "not-listened"),
        written.stream().map(entry -> entry.evidence().kind()).toList());
    assertEquals("11.5", written.get(0).keys().get("level_db"));
  }

  @Test
  void anAnswerLostOnItsWayDoesNotWriteTwice() {
    int before = model.entries().size();
    AtomicInteger sent = new AtomicInteger();
    page.route(
        "**/api/journal",
        route -> {
          if (sent.incrementAndGet() == 1) {
            route.fetch();
            route.abort();
          } else {
            route.resume();
          }
        });
    page.keyboard().press("n");
    page.locator("#pass-write .act").click();
    assertThat(page.locator(".outbox").first()).containsText("one entry waits here");
    assertEquals(before + 1, model.entries().size());
    assertThat(page.locator(".outbox").first()).isEmpty();
    assertEquals(2, sent.get());
    assertEquals(before + 1, model.entries().size());
    assertThat(page.locator(".outcome .status"))
        .containsText("Entry " + (before + 1) + " is written down");
  }

  @Test
  void anEntryWaitsThroughAReloadOfThePage() throws Exception {
    int before = model.entries().size();
    page.route("**/api/journal", route -> route.abort());
    page.keyboard().press("n");
    page.locator("#pass-write .act").click();
    assertThat(page.locator(".outbox").first()).containsText("one entry waits here");
    page.unroute("**/api/journal");
    page.reload();
    assertThat(page.locator(".outbox").first()).isEmpty();
    page.waitForTimeout(500);
    assertEquals(before + 1, model.entries().size());
  }

  @Test
  void whatTheServerRefusesIsToldAndKeptUntilSomebodyForgetsIt() {
    page.keyboard().press("h");
    page.locator("#pass-level").fill("loud");
    page.keyboard().press("Enter");
    assertThat(page.locator(".outbox[role=alert]")).containsText("Not written down: heard");
    assertThat(page.locator(".outbox .problems")).containsText("level_db");
    page.locator(".outbox button").click();
    assertThat(page.locator(".outbox[role=alert]")).hasCount(0);
  }

  @Test
  void nothingIsWrittenForTheRestOfAPassThatIsNotOver() {
    page.keyboard().press("n");
    assertThat(page.locator("#pass-write")).containsText("as the pass is not over");
    page.locator("#pass-write .act").click();
    assertThat(page.locator(".outcome .status")).containsText("is written down");
    Entry last = model.entries().get(model.entries().size() - 1);
    assertTrue(Instant.parse(last.keys().get("to")).isBefore(DURING.plusSeconds(120)));
  }

  @Test
  void stepsStayTickedWithTheirWindow() {
    page.keyboard().press("c");
    assertThat(page.locator(".step.done")).hasCount(1);
    page.reload();
    assertThat(page.locator(".step.done")).hasCount(1);
    page.navigate(server.address() + "#pass/Quay%202026-11-14T12:18:05Z");
    page.waitForSelector(".step");
    assertThat(page.locator(".step.done")).hasCount(0);
  }

  @Test
  void cautionsStandBeforeTheSteps() {
    page.locator(".choose select").selectOption("reset");
    assertThat(page.locator(".pass-steps .cautions")).containsText("licence");
    assertThat(page.locator("[data-live=transmit]")).containsText("MHz");
    assertEquals(
        true,
        page.evaluate(
            "() => !!(document.querySelector('.pass-steps .cautions')"
                + ".compareDocumentPosition(document.querySelector('.step')) & Node.DOCUMENT_POSITION_FOLLOWING)"));
  }

  @Test
  void theTicksGoByABurstThatWasNoticed() {
    assertThat(page.locator(".bursts .pace").first()).hasCount(1);
    page.keyboard().press("b");
    assertThat(page.locator(".bursts .pace")).hasCount(0);
    assertThat(page.locator(".sky-part")).containsText("The ticks go by the one at 10:44:");
  }

  @Test
  void theClockOfARehearsalIsHeldAndSaysSo() {
    assertThat(page.locator(".rehearsal")).containsText("Rehearsal clock ×1");
    page.locator(".rehearsal button").first().click();
    assertThat(page.locator(".rehearsal")).containsText("held");
    String time = page.locator(".clock").innerText();
    page.waitForTimeout(2200);
    assertEquals(time, page.locator(".clock").innerText());
    page.locator(".rehearsal select").selectOption("1800");
    page.locator(".rehearsal button").first().click();
    assertThat(page.locator("h1")).containsText("The pass is over");
  }

  @Test
  void onPaperStandPointingStepsAndRoomToWrite() {
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page.locator(".outcomes")).isHidden();
    assertThat(page.locator("#pass-sheet tbody tr").nth(3)).isVisible();
    assertThat(page.locator("#pass-sheet")).containsText("Noise floor");
    assertTrue(page.locator("#pass-sheet tbody tr").count() > 18);
  }

  @Test
  void theAnswerAndTheButtonsAreOnTheFirstScreen() {
    double bottom =
        ((Number)
                page.evaluate(
                    "() => document.querySelector('.outcomes').getBoundingClientRect().bottom"))
            .doubleValue();
    assertTrue(bottom < 720, "buttons end at " + bottom);
    assertEquals(1, page.locator("h1").count());
    assertEquals(List.of(), visit.complaints());
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    page.evaluate("t => document.querySelector(`input[value=${t}]`).click()", theme);
    page.locator(".choose select").selectOption("reset");
    page.keyboard().press("Escape");
    page.locator(".outcomes button").first().click();
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(300);
    assertEquals(List.of(), Axe.serious(page));
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 640})
  void aPhoneAndAScreenAtTwiceTheSizeAreNotScrolledSideways(int width) {
    page.context().close();
    sit(width, width == 390 ? 844 : 360);
    page.locator(".outcomes button").first().click();
    page.waitForTimeout(300);
    assertEquals(width, page.evaluate("() => document.documentElement.scrollWidth"));
  }

  private String live(String name) {
    return page.locator("[data-live=" + name + "]").innerText();
  }
}
