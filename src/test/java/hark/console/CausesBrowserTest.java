package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CausesBrowserTest extends ConsolePage {
  @Override
  void arrive() {
    page.locator(".pages a[href='#causes']").click();
    page.locator("main.causes .ways").waitFor();
  }

  @Test
  void theAnswerSaysWhatFitsBestAndWhatCannotBeToldApart() {
    assertThat(page.locator("h1")).hasText("Undervoltage loop fits best: 30 ± 2 %.");
    assertThat(page.locator(".why").first())
        .containsText("Listening cannot separate transmitter dead, computer dead, spacecraft lost");
    assertEquals(1, page.locator("h1").count());
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void everyRowShowsStartNowAndWhatAnotherPriorWouldMake() {
    Locator row = page.locator(".from-to .row:has(a:text-is('computer hung'))");
    assertThat(row).containsText("5 %");
    assertThat(row).containsText("17 ± 1 %");
    assertThat(row.locator(".band").last()).containsText("9 % – 29 %");
  }

  @Test
  void anEntryOpensByKeyboardWithAllItMoved() {
    Locator entry = page.locator(".moves th button:has-text('battery 7.05 V')");
    entry.focus();
    page.keyboard().press("Enter");
    assertThat(entry).hasAttribute("aria-expanded", "true");
    assertThat(page.locator(".opened-entry")).containsText("up 1.6 bits");
    assertThat(page.locator(".opened-entry a"))
        .hasAttribute("href", Pattern.compile("#record/\\d+"));
    page.keyboard().press("Enter");
    assertThat(page.locator(".opened-entry")).hasCount(0);
  }

  @Test
  void theWaysAreNamedAtTheirEndsAndTellTheirSumsInWords() {
    String said = page.locator(".ways").getAttribute("aria-label");
    assertTrue(said.startsWith("Bits gained since the start after"), said);
    assertTrue(said.contains("undervoltage loop +"), said);
    assertEquals(6, page.locator(".ways text:has(tspan)").count());
  }

  @Test
  void theTreeIsAListWhoseGatesFoldByKeyboard() {
    assertThat(page.locator(".line[data-node=silent]")).containsText("any of 4");
    assertThat(page.locator(".line[data-node=silent]")).containsText("95 ± 2 %");
    assertThat(page.locator(".line[data-node=uv_loop]")).isVisible();
    Locator gate = page.locator(".line[data-node=power] button");
    gate.focus();
    page.keyboard().press("Enter");
    assertThat(gate).hasAttribute("aria-expanded", "false");
    assertThat(page.locator(".line[data-node=uv_loop]")).hasCount(0);
    page.locator(".tree .turn button").first().click();
    assertThat(page.locator(".line[data-node=uv_loop]")).isVisible();
    assertThat(page.locator(".line[data-node=kept]")).containsText("all of 2");
    assertThat(page.locator(".line[data-node=ground]")).containsText("kept elsewhere");
    page.locator(".tree .turn button").last().click();
    assertThat(page.locator(".line")).hasCount(5);
  }

  @Test
  void aBranchIsThickerTheLikelierItIs() {
    Object widths =
        page.evaluate(
            "() => ['power', 'radio'].map(id => parseFloat([...document.querySelectorAll("
                + "`.line[data-node=${id}] .limbs line`)].pop().getAttribute('stroke-width')))");
    List<?> both = (List<?>) widths;
    double power = ((Number) both.get(0)).doubleValue();
    double radio = ((Number) both.get(1)).doubleValue();
    assertTrue(power > radio + 1, power + " against " + radio);
  }

  @Test
  void aCauseHasItsOwnPageWithWhatWouldSettleIt() {
    page.locator(".from-to a:text-is('computer hung')").click();
    assertThat(page.locator("h1")).hasText("Computer hung: 17 ± 1 %, up from 5 %.");
    assertThat(page.locator(".pages a[aria-current=page]")).hasText("Causes");
    Locator settle = page.locator("#causes-settle");
    assertThat(settle).containsText("a return after the battery runs flat");
    assertThat(settle).containsText("a loss of power on the bus");
    assertThat(settle).containsText("no beacon heard › off, and no command helps");
    assertThat(page.locator(".addressing")).containsText("blind reset");
    assertThat(page.locator(".addressing a").first()).hasAttribute("href", "#runbook/reset");
    assertThat(page.locator(".sources")).containsText("judgement");
    assertThat(page.locator("svg.return")).hasCount(1);
    page.locator("button:has-text('follow it a year ahead')").click();
    assertThat(page.locator(".cause")).containsText("eight in ten send again");
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void keysWalkFromCauseToCause() {
    page.locator(".from-to a:text-is('undervoltage loop')").click();
    page.locator("main.cause").waitFor();
    page.keyboard().press("j");
    assertThat(page.locator("h1")).containsText("Computer hung");
    page.keyboard().press("k");
    assertThat(page.locator("h1")).containsText("Undervoltage loop");
  }

  @Test
  void causesThatCannotBeToldApartNameEachOther() {
    page.navigate(server.address() + "#cause/tx_dead");
    assertThat(page.locator("#causes-settle")).containsText("spacecraft lost");
    assertThat(page.locator("#causes-settle")).containsText("Radar or telescope");
  }

  @Test
  void aCauseThatIsNoneSaysWhereToLook() {
    page.navigate(server.address() + "#cause/gremlins");
    assertThat(page.locator("h1")).hasText("No cause is called “gremlins”.");
    assertThat(page.locator("main a")).hasAttribute("href", "#causes");
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    page.locator(".moves th button").first().click();
    Axe.findsNothingSerious(page, theme);
    page.locator(".from-to a:text-is('computer hung')").first().click();
    page.locator("main.cause").waitFor();
    Axe.findsNothingSerious(page, theme);
  }

  @Test
  void aPhoneIsNotScrolledSideways() {
    onPhone();
    page.locator(".moves th button").first().click();
    Axe.isNotScrolledSideways(page);
    page.locator(".from-to a:text-is('computer hung')").first().click();
    page.locator("main.cause").waitFor();
    Axe.isNotScrolledSideways(page);
  }
}
