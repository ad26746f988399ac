package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnergyBrowserTest {
  private static BrowserSession browser;
  private final FixtureModel model = new FixtureModel(true);
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
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", 0));
    open(1280, 900);
  }

  private void open(int width, int height) {
    visit = browser.open(server.address(), width, height, ColorScheme.LIGHT);
    page = visit.page();
    page.locator(".pages a[href='#energy']").focus();
    page.keyboard().press("Enter");
    page.locator(".states li").first().waitFor();
  }

  @AfterEach
  void close() {
    page.context().close();
    server.close();
  }

  @Test
  void anotherCapacityIsSimulatedAndSaidInASentence() {
    assertThat(page.locator("#energy-key")).hasValue(FixtureEnergy.CAPACITY);
    page.locator("#energy-value").fill("6");
    assertThat(page.locator(".other-said")).containsText("With capacity 6 Ah");
    assertThat(page.locator(".other-world .edge")).hasCount(2);
    page.locator(".what-if summary").click();
    assertThat(page.locator(".changes-of")).containsText("40\u00a0% → 30\u00a0%");
    page.locator(".ask button").click();
    assertThat(page.locator(".other-world")).hasCount(0);
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void theSliderAsksByKeyboard() {
    page.locator("#energy-slide").focus();
    page.keyboard().press("End");
    assertThat(page.locator("#energy-value")).hasValue("12");
    assertThat(page.locator(".other-said")).containsText("With capacity 12 Ah");
  }

  @Test
  void aWrongValueShowsWhatIsWrongAndHowToMendIt() {
    page.locator("#energy-value").fill("much");
    assertThat(page.locator(".what-if .problems")).containsText("'much' is no number");
    assertThat(page.locator(".what-if .problems .mend")).containsText("from 0 to 12");
    assertThat(page.locator("#energy-value")).hasAttribute("aria-invalid", "true");
    page.locator("#energy-value").fill("4");
    assertThat(page.locator(".what-if .problems")).hasCount(0);
    assertThat(page.locator(".other-said")).containsText("4 Ah");
  }

  @Test
  void anUnknownNumberIsNotAskedForButHelpedWith() {
    page.locator("#energy-key").fill("battery");
    assertThat(page.locator(".what-if")).containsText("2 contain that");
    assertThat(page.locator("#energy-value")).hasCount(0);
  }

  @Test
  void aSlowAnswerShowsProgressAndANewerQuestionWins() {
    model.energy().pause = Duration.ofMillis(1200);
    page.locator("#energy-value").fill("5");
    assertThat(page.locator(".what-if .status")).containsText("Simulating");
    page.locator("#energy-value").fill("7");
    assertThat(page.locator(".other-said")).containsText("7 Ah");
    assertThat(page.locator(".what-if .status")).not().containsText("Simulating");
  }

  @Test
  void aClickOnTheFanTellsWhyItIsSoThere() {
    String before = page.locator(".states").first().getAttribute("data-at");
    page.locator("#energy-cursor").click(new Locator.ClickOptions().setPosition(900, 90));
    assertThat(page.locator(".states").first())
        .not()
        .hasAttribute("data-at", Pattern.compile(Pattern.quote(before)));
    assertThat(page.locator(".why-there")).containsText("the voltage under load fell");
    assertThat(page.locator(".why-there h2")).containsText("Why is it off here?");
    page.locator(".reasons button").first().click();
    assertThat(page.locator(".story h2")).containsText("Member 17");
    assertThat(page.locator(".story .events")).containsText("no charge is stored");
    assertThat(page.locator(".story .changes li").first()).containsText("Z");
    assertThat(page.locator("path.one")).hasCount(1);
  }

  @Test
  void theArrowKeysMoveTheTimeAndAskAgain() {
    Locator cursor = page.locator("#energy-cursor");
    String before = cursor.getAttribute("aria-valuenow");
    cursor.focus();
    page.keyboard().press("ArrowRight");
    assertNotEquals(before, cursor.getAttribute("aria-valuenow"));
    assertThat(page.locator(".states").first()).hasAttribute("data-at", "2026-11-14T09:40:00.000Z");
    assertTrue(cursor.getAttribute("aria-valuetext").contains("09:40Z"));
    page.keyboard().press("End");
    assertThat(page.locator(".readout-line")).containsText("17 Nov");
  }

  @Test
  void theLettersOfTheFormDoNothingHereAndTheLinkLeadsBack() {
    page.locator("h1").click();
    page.keyboard().press("n");
    assertThat(page.locator("#energy-axis")).isVisible();
    page.locator(".pages a").first().click();
    assertThat(page.locator("#log-title")).isVisible();
    assertEquals(1, page.locator("h1").count());
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    page.evaluate("t => document.querySelector(`input[value=${t}]`).click()", theme);
    page.locator("#energy-value").fill("6");
    page.locator(".other-said").waitFor();
    page.locator(".reasons button").first().click();
    page.locator(".changes").first().waitFor();
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(300);
    assertEquals(List.of(), Axe.serious(page));
  }

  @Test
  void aPhoneIsNotScrolledSideways() {
    page.context().close();
    open(390, 844);
    page.locator("#energy-value").fill("6");
    page.locator(".other-said").waitFor();
    page.locator(".reasons button").first().click();
    page.locator(".changes").first().waitFor();
    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
    page.waitForTimeout(300);
    assertEquals(390, page.evaluate("() => document.documentElement.scrollWidth"));
  }
}
