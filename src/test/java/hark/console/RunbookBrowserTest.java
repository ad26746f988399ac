package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunbookBrowserTest extends ConsolePage {
  @Override
  void arrive() {
    page.locator(".pages a[href='#runbook']").click();
    page.locator(".procedures li").first().waitFor();
  }

  private void choose(String title) {
    page.locator(".procedures a:text-is('" + title + "')").click();
    page.locator(".sheet").waitFor();
  }

  @Test
  void theNextProcedureOfThePlanIsTheAnswer() {
    assertThat(page.locator("h1")).containsText("Next: listen");
    assertEquals(1, page.locator("h1").count());
    assertThat(page.locator("#runbook-sheet")).containsText("Choose a procedure");
  }

  @Test
  void cautionsComeFirstThenNotIfThenTheSteps() {
    choose("Blind reset");
    List<?> order =
        (List<?>)
            page.evaluate(
                "() => ['.cautions', '.forbidden', '.checklist'].map(q => document.querySelector('.sheet ' + q).getBoundingClientRect().top)");
    double cautions = ((Number) order.get(0)).doubleValue();
    double notIf = ((Number) order.get(1)).doubleValue();
    double steps = ((Number) order.get(2)).doubleValue();
    assertTrue(cautions < notIf && notIf < steps, order.toString());
    assertThat(page.locator(".cautions")).containsText("licence holder");
    Locator first = page.locator(".checklist > li").first();
    for (String part : List.of("expect", "time-out", "if not")) {
      assertThat(first.locator("dl")).containsText(part);
    }
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void stepsAreTickedByKeyboardAndTheTicksStayWhileOneLooksElsewhere() {
    choose("Blind reset");
    page.locator(".checklist input").first().focus();
    page.keyboard().press("Space");
    assertThat(page.locator(".checklist > li").first()).hasClass("done");
    page.locator(".pages a[href='#causes']").click();
    page.locator("main.causes").waitFor();
    page.navigate(server.address() + "#runbook/blind-reset");
    assertThat(page.locator(".checklist input").first()).isChecked();
    page.locator(".sheet .turn button").first().click();
    assertThat(page.locator(".checklist .done")).hasCount(0);
  }

  @Test
  void kindsNarrowTheList() {
    int all = page.locator(".procedures li").count();
    page.locator(".procedures label:has(input[value=command])").click();
    int sending = page.locator(".procedures li").count();
    assertTrue(sending > 0 && sending < all, sending + " of " + all);
    assertThat(page.locator(".procedures li").first()).containsText("sends");
  }

  @Test
  void keysWalkThroughTheProcedures() {
    page.locator("h1").click();
    page.keyboard().press("j");
    page.locator(".sheet").waitFor();
    String first = page.locator(".sheet h2").innerText();
    page.keyboard().press("j");
    assertThat(page.locator(".sheet h2")).not().hasText(first);
    page.keyboard().press("k");
    assertThat(page.locator(".sheet h2")).hasText(first);
  }

  @Test
  void theDraftedEntryIsShownWithItsGapsMarkedAndKept() throws Exception {
    page.locator(".drafted a").click();
    Locator paper = page.locator(".paper");
    assertThat(paper.locator("h2")).hasText("Contact lost: Sandpiper");
    assertThat(paper).containsText("Standing orders");
    assertTrue(paper.locator("table").count() >= 3);
    assertTrue(paper.locator("mark").count() >= 2);
    assertEquals(1, page.locator("h1").count());
    Download file = page.waitForDownload(() -> page.locator(".draft .turn a").click());
    assertEquals("sandpiper-20261114T093000Z.md", file.suggestedFilename());
    assertTrue(Files.readString(file.path()).contains("**to fill**"));
  }

  @Test
  void onPaperOnlyTheProcedureIsLeft() {
    choose("Blind reset");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page.locator(".procedures")).isHidden();
    assertThat(page.locator(".masthead")).isHidden();
    assertThat(page.locator(".checklist > li").first()).isVisible();
    assertThat(page.locator(".cautions")).isVisible();
  }

  @Test
  void aProcedureThatIsNoneSaysSo() {
    page.navigate(server.address() + "#runbook/none");
    assertThat(page.locator("#runbook-sheet")).containsText("No procedure is called “none”.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "night"})
  void axeFindsNothingSerious(String theme) {
    choose("Blind reset");
    page.locator(".checklist input").first().check();
    Axe.findsNothingSerious(page, theme);
    page.locator(".drafted a").click();
    page.locator(".paper").waitFor();
    Axe.findsNothingSerious(page, theme);
  }

  @Test
  void aPhoneShowsWhatWasChosenAndIsNotScrolledSideways() {
    onPhone();
    choose("Blind reset");
    page.waitForFunction(
        "() => { const t = document.querySelector('.sheet').getBoundingClientRect().top; return t > -200 && t < 400; }");
    Axe.isNotScrolledSideways(page);
    page.navigate(server.address() + "#runbook/draft");
    page.locator(".paper").waitFor();
    Axe.isNotScrolledSideways(page);
  }
}
