package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.plan.Procedure;
import hark.plan.Procedure.Change;
import hark.plan.Procedure.Kind;
import hark.power.OnboardCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StockProceduresTest {
  private final List<Procedure> stock = Procedures.stock();

  private Procedure get(String id) {
    return stock.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private Procedure.Setting setting(String id) {
    return ((Procedure.Listen) get(id).change()).setting();
  }

  @Test
  void theIndexNamesEveryFileOfTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("runbooks"))) {
      Set<String> there =
          files
              .map(f -> f.getFileName().toString())
              .filter(n -> n.endsWith(".md"))
              .collect(Collectors.toSet());
      assertEquals(there, Set.copyOf(ResourceFolder.of("").list("runbooks")));
    }
  }

  @Test
  void theLintFindsNothingInThem() {
    Problems problems = new Problems();
    for (ProcedureFile file : Procedures.readAll(ResourceFolder.of(""), problems)) {
      assertEquals(List.of(), file.warnings(), file.procedure().id());
    }
    assertEquals(List.of(), problems.list());
  }

  @Test
  void fileNameAndIdAreTheSame() {
    Set<String> ids = stock.stream().map(p -> p.id() + ".md").collect(Collectors.toSet());
    assertEquals(ids, Set.copyOf(ResourceFolder.of("").list("runbooks")));
  }

  @Test
  void sendingNothingIsAmongThem() {
    assertEquals(Kind.WAIT, get("send-nothing").kind());
    assertEquals(new Procedure.Wait(), get("send-nothing").change());
  }

  @Test
  void whatTheyChangeIsReadForTheModel() {
    assertEquals(
        new Procedure.Listen(Optional.empty(), Optional.empty(), 0, false, 0),
        get("listen-as-planned").change());
    assertEquals(-20, ((Procedure.Listen) get("listen-early").change()).offsetSeconds());
    assertEquals(20, ((Procedure.Listen) get("listen-late").change()).offsetSeconds());
    assertTrue(((Procedure.Listen) get("listen-other-candidate").change()).otherCandidate());
    assertEquals(
        Optional.of(10_000.0), ((Procedure.Listen) get("listen-wide").change()).windowHz());
    assertEquals(new Procedure.SelfCheck(), get("known-satellite-check").change());
    assertEquals(new Procedure.Settle(Procedure.Question.OBJECT), get("whose-curve").change());
    assertEquals(new Procedure.Settle(Procedure.Question.TRACK), get("refresh-elements").change());
    assertEquals(new Procedure.Wait(Procedure.Until.FULL_SUN), get("wait-for-full-sun").change());
    assertEquals(
        new Procedure.Command(OnboardCommand.RESET, 3, true), get("blind-counter-sweep").change());
    assertEquals(Procedure.Who.NOBODY, setting("record-unattended").who());
    assertEquals(Procedure.Who.OUTSIDE, setting("ask-amateurs").who());
    assertTrue(setting("listen-other-hand").otherHand());
    assertEquals(OptionalDouble.of(10), setting("listen-after-sunrise").sunriseMinutes());
    Set<OnboardCommand> sent =
        stock.stream()
            .map(Procedure::change)
            .filter(Procedure.Command.class::isInstance)
            .map((Change c) -> ((Procedure.Command) c).command())
            .collect(Collectors.toSet());
    assertEquals(Set.of(OnboardCommand.values()), sent);
  }

  /** Parts of a procedure after ECSS-E-ST-70-32C, in the words of our own template. */
  @Test
  void everyOneHasItsParts() {
    for (Procedure procedure : stock) {
      for (String part :
          List.of(
              "**Trigger.**",
              "**Purpose.**",
              "**Roles.**",
              "## Preconditions and constraints",
              "## Steps",
              "## Stop conditions",
              "## Exit test",
              "## Rollback",
              "## References",
              "Expect",
              "**If not**",
              "Time-out:")) {
        assertTrue(procedure.markdown().contains(part), procedure.id() + " lacks " + part);
      }
    }
  }

  @Test
  void whoeverSendsIsToldOfLicenceSwitchBeamAndNeighbours() {
    for (Procedure procedure : stock) {
      if (procedure.kind() == Kind.COMMAND) {
        String cautions = String.join(" ", procedure.cautions());
        for (String word :
            List.of(
                "licence holder", "silence the transmitter", "exposure", "neighbour", "rotator")) {
          assertTrue(cautions.contains(word), procedure.id() + " lacks " + word);
        }
        assertTrue(procedure.forbiddenIf().size() >= 2, procedure.id());
      }
    }
  }

  /** Two stock procedures that do the same would be one too many in every window's list. */
  @Test
  void noTwoOfThemChangeTheSame() {
    assertEquals(stock.size(), stock.stream().map(Procedure::change).distinct().count());
  }

  @Test
  void idsAreUnique() {
    assertEquals(stock.size(), new TreeSet<>(stock.stream().map(Procedure::id).toList()).size());
    assertTrue(stock.size() >= 18, "found " + stock.size());
  }
}
