package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import hark.evidence.Entry;
import hark.problem.Problem;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordBrowserTest extends ConsolePage {
  @Override
  void arrive() {
    page.locator(".pages a[href='#record']").click();
    page.locator(".entries li").first().waitFor();
  }

  private Locator entry(int number) {
    return page.locator("#record-" + number);
  }

  @Test
  void itSaysThatTheRecordIsWholeAndWhereTheChainEnds() {
    assertThat(page.locator("h1")).hasText("The record is whole: 15 entries.");
    assertThat(page.locator(".chain")).containsText("entry 15, 3f2a3f2a3f2a");
    assertThat(page.locator(".entries > li")).hasCount(15);
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void aBrokenChainIsTheFirstThingSaid() {
    model.breakChain(
        new Problem("entry 4 was changed after it was written", "journal.db", "compare"));
    page.reload();
    assertThat(page.locator("h1")).containsText("The record is broken.");
    assertThat(page.locator("h1")).containsText("entry 4 was changed");
    assertThat(page.locator(".answer .problems .mend")).containsText("compare");
  }

  @Test
  void filtersNarrowTheListTogether() {
    page.locator("#record-kind").selectOption("heard");
    assertThat(page.locator(".entries > li")).hasCount(2);
    page.locator("#record-station").selectOption("Quay");
    assertThat(page.locator(".entries > li")).hasCount(1);
    page.locator("#record-entries .turn button").first().click();
    page.locator("#record-text").fill("7.05");
    assertThat(page.locator(".entries > li")).hasCount(1);
    assertThat(page.locator("#record-entries-title")).hasText("1 of 15 entries");
    page.locator("#record-text").fill("");
    page.locator("#record-from").fill("2026-11-06");
    page.locator("#record-to").fill("2026-11-06 23:00");
    assertThat(page.locator(".entries > li")).hasCount(3);
    page.locator("#record-to").fill("soon");
    assertThat(page.locator("#record-to")).hasAttribute("aria-invalid", "true");
    page.locator("#record-to").fill("");
    page.locator("#record-text").fill("gremlins");
    assertThat(page.locator("#record-entries")).containsText("widen the filter");
  }

  @Test
  void anEntryIsCorrectedFromWhereItStandsAndSaysWhatWasReplaced() {
    entry(3).locator("summary").click();
    entry(3).locator("button:has-text('correct')").click();
    assertThat(page.locator("input[value=correction]")).isChecked();
    assertThat(page.locator("#f-new-volts")).hasValue("7.05");
    page.locator("#f-new-volts").fill("7.15");
    page.locator(".log button.act").click();
    assertThat(entry(16)).isVisible();
    Entry last = model.entries().get(15);
    assertEquals(Map.of("of", "3", "volts", "7.15"), last.keys(), "only what differs is written");
    assertThat(entry(3).locator(".mark")).hasText("corrected");
    assertThat(entry(3).locator(".change")).hasText("Battery, V: 7.05 → 7.15");
    assertThat(page.locator("h1")).hasText("The record is whole: 16 entries.");
  }

  @Test
  void aSecondCorrectionBeginsWhereTheFirstLeftIt() {
    page.locator("input[value=correction]").evaluate("e => e.click()");
    page.locator("#f-of").selectOption("3");
    page.locator("#f-new-volts").fill("7.15");
    page.locator(".log button.act").click();
    assertThat(entry(16)).isVisible();
    page.locator("#f-of").selectOption("3");
    assertThat(page.locator("#f-new-volts")).hasValue("7.15");
  }

  @Test
  void anEntryIsWithdrawnAndTakenBackIn() {
    entry(3).locator("summary").click();
    entry(3).locator("button:has-text('correct')").click();
    page.locator("#f-withdrawn").check();
    page.locator(".log button.act").click();
    assertThat(entry(3).locator(".mark")).hasText("withdrawn");
    entry(3).locator("button:has-text('correct')").click();
    assertThat(page.locator(".own")).containsText("take it back in");
    page.locator("#f-withdrawn").check();
    page.locator(".log button.act").click();
    assertThat(entry(17)).isVisible();
    assertThat(entry(3).locator(".mark")).hasText("corrected");
  }

  @Test
  void anEmptiedFieldTakesItsKeyAway() {
    entry(1).locator("summary").click();
    entry(1).locator("button:has-text('correct')").click();
    page.locator("#f-new-level_db").fill("");
    page.locator(".log button.act").click();
    assertThat(entry(16)).isVisible();
    assertEquals("", model.entries().get(15).keys().get("level_db"));
    assertThat(entry(1).locator(".change")).containsText("14 → not said");
  }

  @Test
  void theAddressOpensAnEntry() {
    page.navigate(server.address() + "#record/3");
    assertThat(entry(3).locator(".written")).containsText("7.05");
    assertThat(entry(3).locator(".bits")).containsText("up 1.6 bits");
  }

  @Test
  void theRecordIsKeptAsAFile() throws Exception {
    Download file = page.waitForDownload(() -> page.locator(".take a").first().click());
    assertEquals("journal.csv", file.suggestedFilename());
    assertTrue(Files.readString(file.path()).startsWith("number,at,kind,keys,who,note"));
  }

  @Test
  void aListShowsItsFirstChoiceWhateverKindWasChosenBefore() {
    page.locator("input[value=separation]").evaluate("e => e.click()");
    page.locator("input[value=command-sent]").evaluate("e => e.click()");
    assertThat(page.locator("#f-station")).hasValue("Fen Hill");
  }

  @Test
  void keysLookAndWrite() {
    page.locator("h1").click();
    page.keyboard().press("/");
    assertThat(page.locator("#record-text")).isFocused();
    page.locator("#record-text").blur();
    page.keyboard().press("x");
    assertThat(page.locator("input[value=not-listened]")).isChecked();
    assertThat(page.locator("#f-window")).isFocused();
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    entry(3).locator("summary").click();
    entry(3).locator("button:has-text('correct')").click();
    Axe.findsNothingSerious(page, theme);
  }

  @Test
  void aPhoneIsNotScrolledSidewaysUnderAnyForm() {
    onPhone();
    for (Locator kind : page.locator(".kinds input").all()) {
      kind.evaluate("e => e.click()");
      Axe.isNotScrolledSideways(page);
    }
    assertThat(page.locator(".kinds label"))
        .hasText(
            new Pattern[] {
              Pattern.compile("heard"), Pattern.compile("nothing"), Pattern.compile("could not"),
              Pattern.compile("telemetry"), Pattern.compile("check"), Pattern.compile("others"),
              Pattern.compile("object"), Pattern.compile("Doppler"), Pattern.compile("recording"),
              Pattern.compile("motion"), Pattern.compile("separation"), Pattern.compile("command"),
              Pattern.compile("note"), Pattern.compile("correction")
            });
  }
}
