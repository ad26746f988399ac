package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetUpBrowserTest extends ConsolePage {
  @Override
  void arrive() {
    page.navigate(server.address() + "#setup/array_shortfall");
    page.locator("#setup-text").waitFor();
  }

  private void prior(String percent) {
    page.locator("#prior-array_shortfall").fill(percent);
    assertThat(page.locator(".edits li")).hasCount(1);
  }

  private void workOut() {
    assertThat(page.locator(".try .act")).isEnabled();
    page.locator(".try .act").click();
  }

  @Test
  void theFilesAreInOrderAndTheCauseInTheAddressIsReadyToBeTried() {
    assertThat(page.locator("h1")).hasText("The files are in order.");
    assertThat(page.locator("#prior-array_shortfall")).isFocused();
    assertThat(page.locator("#prior-array_shortfall")).hasValue("3");
    assertThat(page.locator(".try .act")).isDisabled();
    assertThat(page.locator("#setup-found")).containsText(FixturePapers.TREE.what());
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void anotherPriorIsWorkedOutAndSetBesideWhatIs() {
    prior("10");
    assertThat(page.locator("h1")).hasText("The changed files are in order.");
    workOut();
    page.locator(".compared").waitFor();
    assertThat(page.locator("h1"))
        .hasText("With these numbers undervoltage loop would fit best: 50 ± 2 %.");
    var row = page.locator(".compared .row:has(a:text-is('undervoltage loop'))");
    assertThat(row).containsText("prior 8 % → 10 %");
    assertThat(row).containsText("30 ± 2 %");
    assertThat(row).containsText("50 ± 2 %");
    assertThat(page.locator(".compared .said")).hasCount(2);
    assertThat(page.locator(".compared table")).containsText("windows planned");
    prior("20");
    assertThat(page.locator(".stale")).containsText("work it out again");
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void theProgressShowsAndCanBeStopped() {
    model.papersOfDemo().pause = Duration.ofMinutes(1);
    prior("10");
    workOut();
    assertThat(page.locator(".progress")).containsText("s of about");
    page.locator(".send button:text-is('stop')").click();
    assertThat(page.locator(".progress")).hasCount(0);
    model.papersOfDemo().pause = Duration.ZERO;
    workOut();
    page.locator(".compared").waitFor();
  }

  @Test
  void anyKeyIsSetAsTheFileWritesItAndTakenBack() {
    page.locator("#setup-key").fill("spacecraft.battery.cell.capacity_Ah");
    assertThat(page.locator("#setup-value")).hasValue("2.6");
    assertThat(page.locator(".any-key")).containsText("plausible 0.65 to 10.4");
    page.locator("#setup-value").fill("1.8");
    page.locator("#setup-value").press("Enter");
    assertThat(page.locator(".edits")).containsText("capacity_Ah");
    page.waitForFunction(
        "() => document.getElementById('setup-text').value.includes('capacity_Ah: 1.8')");
    page.locator(".edits button").click();
    page.waitForFunction(
        "() => document.getElementById('setup-text').value.includes('capacity_Ah: 2.6')");
  }

  @Test
  void aValueThatCannotBeIsRefusedWithWhatToWrite() {
    page.locator("#prior-array_shortfall").fill("200");
    assertThat(page.locator("h1")).hasText("One problem stands in the way.");
    assertThat(page.locator("#setup-found .problems").first()).containsText("array_shortfall");
    assertThat(page.locator(".try .act")).isDisabled();
    page.locator("button:text-is('all as it is')").click();
    assertThat(page.locator("h1")).hasText("The files are in order.");
    assertThat(page.locator("#prior-array_shortfall")).hasValue("3");
  }

  @Test
  void aMistakeInTheTextIsToldByItsLineAndTheLineIsFound() {
    String text = page.locator("#setup-text").inputValue();
    page.locator("#setup-text").fill(text.replace("mass_kg: 2.7", "mass_kg: heavy"));
    assertThat(page.locator("h1")).hasText("One problem stands in the way.");
    assertThat(page.locator("#setup-try .problems")).hasCount(0);
    page.locator(".at-lines button").first().click();
    page.waitForFunction(
        "() => { const t = document.getElementById('setup-text');"
            + " return t.value.slice(t.selectionStart, t.selectionEnd) === '  mass_kg: heavy'; }");
  }

  @Test
  void theChangedFileIsKeptByTheBrowserAlone() throws Exception {
    prior("10");
    assertThat(page.locator("h1")).hasText("The changed files are in order.");
    page.locator(".texts label:has(input[value='causes.yaml'])").click();
    Download file = page.waitForDownload(() -> page.locator(".texts .turn button").click());
    assertEquals("causes.yaml", file.suggestedFilename());
    assertTrue(Files.readString(file.path()).contains("array_shortfall:\n    probability: 0.1"));
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void everyKeyIsThereToReadAndDefaultsAreInBrackets() {
    page.locator("#setup-words").fill("fade");
    assertThat(page.locator(".group-of")).hasCount(1);
    assertThat(page.locator(".group-of dd")).containsText("(0.03) by default per year");
    page.locator(".group-of dt button").click();
    assertThat(page.locator("#setup-key")).hasValue("spacecraft.battery.fade_per_year");
    assertThat(page.locator("#setup-value")).isFocused();
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    prior("10");
    workOut();
    page.locator(".compared").waitFor();
    Axe.findsNothingSerious(page, theme);
  }

  @Test
  void aPhoneIsNotScrolledSideways() {
    onPhone();
    prior("10");
    workOut();
    page.locator(".compared").waitFor();
    Axe.isNotScrolledSideways(page);
  }
}
