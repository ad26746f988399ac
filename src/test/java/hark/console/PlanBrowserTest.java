package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The plan's page; the plan is invented and answered by {@link FixturePlan}. */
class PlanBrowserTest {
  private static final Pattern PLANNED = Pattern.compile("\\bplanned\\b");
  private static final Pattern OPEN = Pattern.compile("\\bopen\\b");

  private static ConsoleServer server;
  private static BrowserSession browser;
  private BrowserSession.Visit visit;
  private FixturePlan plan;
  private Page page;

  @BeforeAll
  static void start() throws Exception {
    server = ConsoleServer.start(new FixtureModel(true), ConsoleSettings.of("127.0.0.1", 0));
    browser = new BrowserSession();
  }

  @AfterAll
  static void stop() {
    browser.close();
    server.close();
  }

  @BeforeEach
  void open() {
    open(1280, 800);
  }

  private void open(int width, int height) {
    visit = browser.open(server.address(), width, height, ColorScheme.LIGHT);
    page = visit.page();
    plan = FixturePlan.on(page);
    page.locator(".pages a[href='#plan']").click();
    page.locator("main.plan .curve").waitFor();
  }

  @AfterEach
  void close() {
    page.context().close();
  }

  private Locator first(String kind) {
    return page.locator(".slot." + kind).first();
  }

  private Locator same(Locator slot) {
    return page.locator(".slot[data-window='" + slot.getAttribute("data-window") + "']");
  }

  @Test
  void theAnswerStandsFirstAndNothingIsComplainedOf() {
    assertThat(page.locator("h1")).hasText(Pattern.compile("\\bh by 17 Nov hear it with .*%\\.$"));
    assertThat(page.locator(".why").first()).containsText("One more hour a week");
    assertEquals(1, page.locator("h1").count());
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void aPassIsSkippedByItsKeyAndItsCostIsToldAtOnce() {
    Locator slot = same(first("planned"));
    slot.focus();
    page.keyboard().press("Enter");
    assertThat(slot).hasClass(OPEN);
    assertThat(slot).hasAttribute("aria-label", Pattern.compile("skipped by you"));
    assertThat(page.locator(".changes")).containsText("One change of yours");
    assertThat(page.locator(".changes")).containsText("You skip a pass.");
    assertThat(page.locator(".changes .cost")).containsText("−0.5\u00a0h");
    assertTrue(plan.posted().get(0).contains("\"procedure\":null"), plan.posted().get(0));
    page.keyboard().press("u");
    assertThat(slot).hasClass(PLANNED);
    assertThat(page.locator(".changes")).isEmpty();
  }

  @Test
  void aReedPulledUpIsTakenAndPulledDownSkippedAgain() {
    Locator slot = same(first("open"));
    pull(slot, -20);
    assertThat(slot).hasClass(PLANNED);
    assertThat(page.locator(".changes")).containsText("You add a pass.");
    assertThat(page.locator(".changes .problems")).containsText("more hours than it has");
    pull(slot, 20);
    assertThat(slot).hasClass(OPEN);
    assertThat(page.locator(".changes")).isEmpty();
  }

  private void pull(Locator slot, int pixels) {
    slot.scrollIntoViewIfNeeded();
    BoundingBox box = slot.locator(".grip").boundingBox();
    double x = box.x + box.width / 2;
    double y = box.y + box.height / 2;
    page.mouse().move(x, y);
    page.mouse().down();
    page.mouse().move(x, y + pixels / 2.0);
    page.mouse().move(x, y + pixels);
    page.mouse().up();
  }

  @Test
  void aClickOnlyChooses() {
    Locator slot = page.locator(".slot").nth(4);
    slot.click();
    assertThat(slot).hasClass(Pattern.compile("selected"));
    assertEquals(List.of(), plan.posted());
    assertThat(page.locator("#plan-window"))
        .containsText("It is the fixture's pass, and finds what it finds.");
  }

  @Test
  void anotherProcedureIsTakenFromTheListOfWhatCouldBeDone() {
    first("planned").click();
    page.locator(".alternatives button").first().click();
    assertThat(page.locator("#plan-window .heading")).containsText("changed by you");
    assertEquals(1, plan.posted().size());
    page.locator(".acts button:has-text('As proposed')").click();
    assertThat(page.locator("#plan-window .heading")).containsText("proposed");
  }

  @Test
  void whatIsAcceptedOrChangedIsStillSoAfterTheNextVisit() {
    Locator kept = same(first("planned"));
    kept.click();
    page.keyboard().press("a");
    assertThat(kept.locator(".agreed")).hasCount(1);
    Locator skipped = same(page.locator(".slot.planned").nth(1));
    skipped.focus();
    page.keyboard().press(" ");
    page.reload();
    page.waitForSelector("main.plan .curve");
    assertThat(kept.locator(".agreed")).hasCount(1);
    assertThat(skipped).hasClass(OPEN);
    page.locator("button:has-text('Back to the proposal')").click();
    assertThat(skipped).hasClass(PLANNED);
    assertThat(kept.locator(".agreed")).hasCount(1);
  }

  @Test
  void everyPassStandsWithItsReason() {
    page.locator(".reasons summary").click();
    Locator rows = page.locator(".reasons tbody tr");
    assertThat(rows).hasCount(page.locator(".slot").count());
    assertThat(rows.first()).containsText("It is the fixture's pass");
    String pass = rows.nth(2).locator("button").textContent();
    rows.nth(2).locator("button").click();
    String spoken = page.locator(".slot.selected").getAttribute("aria-label");
    assertTrue(spoken.startsWith(pass), spoken + " is not " + pass);
  }

  @Test
  void thePassesAreWalkedByKeys() {
    String before = page.locator(".slot.selected").getAttribute("data-window");
    page.keyboard().press("j");
    String after = page.locator(".slot.selected").getAttribute("data-window");
    assertTrue(!before.equals(after), before);
    page.keyboard().press("k");
    assertThat(page.locator(".slot.selected")).hasAttribute("data-window", before);
  }

  @Test
  void theCaseShowsItsNumbersAndIsKeptAsAFile() {
    Locator made = page.locator("#plan-case");
    assertThat(made).containsText("Stopping is defensible once 20 h");
    assertThat(made).containsText("21\u00a0%");
    assertThat(made).containsText("Quay records by itself in 14 windows");
    assertThat(made).containsText("2 Feb 2027 ± 3 d");
    assertThat(made.locator("a[download]")).hasAttribute("href", "/api/case/file");
    assertThat(page.locator(".curve")).hasAttribute("aria-label", Pattern.compile("takes 8.5"));
    Download file = page.waitForDownload(() -> made.locator("a[download]").click());
    assertEquals("sandpiper-one-case-20261114T093000Z.md", file.suggestedFilename());
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    first("planned").click();
    Axe.findsNothingSerious(page, theme);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 640, 390})
  void nothingIsScrolledSideways(int width) {
    close();
    open(width, 844);
    Axe.isNotScrolledSideways(page);
  }
}
