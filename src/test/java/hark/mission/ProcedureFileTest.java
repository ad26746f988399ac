package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.plan.Procedure;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProcedureFileTest {
  private static final String RESET =
      """
      ---
      id: try-reset
      title: Try a reset
      kind: command
      needs: [transmitter, licence]
      changes: { command: reset, repeats: 3 }
      cost_hours: 0.5
      cautions: [the licence holder can silence it]
      ---
      # Try a reset

      ## Steps

      1. Send it. Expect silence. Time-out: LOS. If not: stop.
      2. Listen. Expect a burst. Time-out: LOS.
      """;

  private static List<Problem> problems(String markdown) {
    return assertThrows(BadInput.class, () -> ProcedureFile.read("p.md", markdown)).problems();
  }

  @Test
  void frontMatterGoesToTheModelAndTheRestToPeople() {
    Procedure procedure = ProcedureFile.read("p.md", RESET);
    assertEquals("try-reset", procedure.id());
    assertEquals(0.5, procedure.costHours());
    assertEquals(3, ((Procedure.Command) procedure.change()).repeats());
    assertTrue(procedure.markdown().startsWith("# Try a reset"));
  }

  @Test
  void anEditorsMarkAndLineEndsDoNoHarm() {
    String other = "\uFEFF" + RESET.replace("\n", "\r\n");
    assertEquals(ProcedureFile.read("p.md", RESET), ProcedureFile.read("p.md", other));
  }

  @Test
  void aStepWithoutIfNotIsAWarningAtItsLine() {
    ProcedureFile file = ProcedureFile.check("p.md", RESET, new Problems()).orElseThrow();
    assertEquals(1, file.warnings().size());
    assertEquals("p.md:15", file.warnings().get(0).where());
    assertTrue(file.warnings().get(0).what().startsWith("step 2"));
  }

  private static List<Problem> warnings(String before, String after) {
    assertTrue(RESET.contains(before), before);
    Problems problems = new Problems();
    ProcedureFile file =
        ProcedureFile.check("p.md", RESET.replace(before, after), problems).orElseThrow();
    assertEquals(List.of(), problems.list());
    return file.warnings().stream().filter(w -> !w.what().startsWith("step 2")).toList();
  }

  @Test
  void aStepWithoutConfirmationOrTimeOutIsAWarning() {
    assertEquals(List.of(), warnings("Try a reset", "Try a reset"));
    assertEquals(
        List.of("step 1 does not say what to expect"),
        warnings("Expect silence. ", "").stream().map(Problem::what).toList());
    assertEquals(
        List.of("step 1 does not say until when to wait"),
        warnings("Expect silence. Time-out: LOS.", "Expect silence.").stream()
            .map(Problem::what)
            .toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the licence holder can silence it|somebody can silence it|authorise",
        "the licence holder can silence it|the licence holder says when|silenced",
        "1. Send it.|1. Turn the antenna by its rotator.|antennas move",
        "1. Send it.|1. Put the spare battery on the charger.|cells",
        "[transmitter, licence]|[transmitter, licence, lithium_cells]|cells",
        "[transmitter, licence]|[transmitter, licence, rotator]|antennas move",
      })
  void aDangerWithoutItsCautionIsAWarning(String before, String after, String word) {
    List<Problem> found = warnings(before, after);
    assertEquals(1, found.size(), found::toString);
    assertTrue(found.get(0).what().contains(word), found::toString);
    assertEquals("p.md:8 cautions", found.get(0).where());
  }

  @Test
  void whoeverKeysATransmitterNeedsALicenceWhateverTheKind() {
    String listening =
        RESET
            .replace("kind: command", "kind: listen")
            .replace("{ command: reset, repeats: 3 }", "{ hand: other }")
            .replace("[transmitter, licence]", "[transmitter]");
    assertEquals(
        List.of("p.md:5 needs"), problems(listening).stream().map(Problem::where).toList());
  }

  @Test
  void aFileThatTheFoldersIndexForgetsIsAWarning() {
    TextFolder folder = TextFolder.kittiwake().with("runbooks/mine.md", RESET);
    long before = Missions.read(folder).warnings().size();
    TextFolder named = folder.with("runbooks/index", "mine.md\n");
    assertEquals(before, Missions.read(named).warnings().size());
    Mission forgot = Missions.read(folder.with("runbooks/index", "other.md\n"));
    assertEquals(before + 1, forgot.warnings().size());
    assertTrue(
        forgot.warnings().stream().anyMatch(w -> w.what().equals("mine.md is not named in it")));
  }

  @Test
  void aDeskSettlesOneQuestionOrChecksAStation() {
    String desk =
        RESET
            .replace("kind: command", "kind: desk")
            .replace("{ command: reset, repeats: 3 }", "{ settles: track }");
    assertEquals(
        new Procedure.Settle(Procedure.Question.TRACK), ProcedureFile.read("p.md", desk).change());
    String both = desk.replace("{ settles: track }", "{ settles: track, self_check: true }");
    assertEquals("p.md:6 changes.settles", problems(both).get(0).where());
    String neither = desk.replace("{ settles: track }", "{}");
    assertEquals("p.md:6 changes.self_check", problems(neither).get(0).where());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "id: try-reset|id: Try Reset|p.md:2 id|lower-case",
        "id: try-reset|name: try-reset|p.md:2 id|missing",
        "kind: command|kind: comand|p.md:4 kind|'command'",
        "command: reset|command: rest|p.md:6 changes.command|'reset'",
        "repeats: 3|repeats: 0|p.md:6 changes.repeats|from 1",
        "repeats: 3|repeat: 3|p.md:6 changes.repeat|'repeats'",
        "repeats: 3|counter: each|p.md:6 changes.counter|any",
        "cost_hours: 0.5|cost_hours: half|p.md:7 cost_hours|number",
        "[transmitter, licence]|[transmitter, license]|p.md:5 needs|'licence'",
        "[transmitter, licence]|[transmitter]|p.md:5 needs|'licence'",
        "cautions: [the licence holder can silence it]|cautions: []|p.md:8 cautions|without cautions",
      })
  void everyMistakeIsNamedAtItsLine(String before, String after, String where, String word) {
    List<Problem> found = problems(RESET.replace(before, after));
    assertTrue(
        found.stream().anyMatch(p -> p.where().equals(where) && p.line().contains(word)),
        found::toString);
  }

  @Test
  void whatABodyOfTextLacksIsToldAtOnce() {
    assertEquals("p.md:1", problems("# Only text\n").get(0).where());
    assertEquals(1, problems("---\nid: a-b\ntitle: A\nkind: wait\n---\n").size());
    assertEquals("p.md", problems("x".repeat(100_000)).get(0).where());
  }

  @Test
  void aFoldersOwnProcedureReplacesTheStockOneOfTheSameId() {
    String own = RESET.replace("try-reset", "blind-reset");
    TextFolder folder = TextFolder.kittiwake().with("runbooks/mine.md", own);
    Mission mission = Missions.read(folder);
    List<Procedure> resets =
        mission.procedures().stream().filter(p -> p.id().equals("blind-reset")).toList();
    assertEquals(List.of("Try a reset"), resets.stream().map(Procedure::title).toList());
    assertEquals(Procedures.stock().size(), mission.procedures().size());
  }

  @Test
  void twoFilesWithOneIdAreAProblem() {
    TextFolder folder =
        TextFolder.kittiwake().with("runbooks/a.md", RESET).with("runbooks/b.md", RESET);
    List<Problem> found = Missions.check(folder).problems();
    assertEquals(1, found.size());
    assertEquals("runbooks/b.md", found.get(0).where());
    assertEquals(Optional.empty(), Missions.check(folder).mission());
  }
}
