package hark.evidence;

import static hark.evidence.EvidenceTextTest.CONTEXT;
import static hark.evidence.EvidenceTextTest.map;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An entry and its correction leave nothing behind of the old. */
class EvidenceBookTest {
  private static final Instant LATER = Instant.parse("2027-01-01T00:00:00Z");

  private final List<Entry> journal = new ArrayList<>();

  private int log(String kind, String... keys) {
    EvidenceBook.Draft draft = EvidenceBook.draft(journal, kind, map(keys), CONTEXT);
    int number = journal.size() + 1;
    journal.add(new Entry(number, CONTEXT.at(), "", "", draft.keys(), draft.evidence()));
    return number;
  }

  private List<Entry> standing() {
    return EvidenceBook.effective(journal, LATER);
  }

  private double volts() {
    return ((Evidence.Telemetry) standing().get(0).evidence()).volts().orElseThrow();
  }

  @Test
  void entriesComeInOrderOfTimeThenNumber() {
    log("telemetry", "volts=7", "at=2026-11-08T00:00:00Z");
    log("telemetry", "volts=6", "at=2026-11-07T00:00:00Z");
    log("note", "text=same time", "at=2026-11-07T00:00:00Z");
    assertEquals(List.of(2, 3, 1), standing().stream().map(Entry::number).toList());
  }

  @Test
  void entriesNotOverByNowAreIgnored() {
    log("nothing-heard", "station=Quay", "from=2026-11-07T00:00:00Z", "to=2026-11-07T00:09:00Z");
    Instant during = Instant.parse("2026-11-07T00:05:00Z");
    assertTrue(EvidenceBook.effective(journal, during).isEmpty());
    assertEquals(1, EvidenceBook.effective(journal, during.plusSeconds(240)).size());
  }

  @Test
  void aCorrectionReplacesItsKeysAndKeepsTheOthers() {
    log("telemetry", "volts=7.5", "volts_sd=0.2", "at=2026-11-07T00:00:00Z");
    log("correction", "of=1", "volts=7.05");
    Evidence asIfWrittenSo =
        EvidenceText.parse(
            "telemetry", map("volts=7.05", "volts_sd=0.2", "at=2026-11-07T00:00:00Z"), CONTEXT);
    assertEquals(1, standing().size());
    assertEquals(asIfWrittenSo, standing().get(0).evidence());
    assertFalse(standing().toString().contains("7.5"), "nothing is left of the old value");
  }

  @Test
  void aCorrectionCanMoveAnEntryInTime() {
    log("telemetry", "volts=7", "at=2026-11-08T00:00:00Z");
    log("note", "text=between", "at=2026-11-07T12:00:00Z");
    log("correction", "of=1", "at=2026-11-07T00:00:00Z");
    assertEquals(List.of(1, 2), standing().stream().map(Entry::number).toList());
  }

  @Test
  void anEmptyValueTakesAKeyAway() {
    log("telemetry", "volts=7", "volts_sd=0.2");
    log("correction", "of=1", "volts_sd=");
    Evidence.Telemetry telemetry = (Evidence.Telemetry) standing().get(0).evidence();
    assertTrue(telemetry.readings().get(Channel.VOLTS).sd().isEmpty());
  }

  @Test
  void aWithdrawnEntryIsGoneUntilItIsRestored() {
    log("telemetry", "volts=7");
    log("correction", "of=1", "withdrawn=yes");
    assertTrue(standing().isEmpty());
    log("correction", "of=1", "withdrawn=no");
    assertEquals(7, volts());
  }

  @Test
  void laterCorrectionsOfOneEntryWin() {
    log("telemetry", "volts=7");
    log("correction", "of=1", "volts=6");
    log("correction", "of=1", "volts=5");
    assertEquals(5, volts());
  }

  @Test
  void aCorrectionMayBeCorrectedAndWithdrawn() {
    log("telemetry", "volts=7");
    log("correction", "of=1", "volts=6");
    log("correction", "of=2", "volts=6.5");
    assertEquals(6.5, volts());
    log("correction", "of=2", "withdrawn=yes");
    assertEquals(7, volts());
  }

  @Test
  void aWithdrawalMayItselfBeWithdrawn() {
    log("telemetry", "volts=7");
    log("correction", "of=1", "withdrawn=yes");
    log("correction", "of=2", "withdrawn=yes");
    assertEquals(7, volts());
  }

  @Test
  void correctionsMadeAfterNowAreNotKnownYet() {
    log("telemetry", "volts=7", "at=2026-11-07T00:00:00Z");
    log("correction", "of=1", "volts=6");
    Instant before = CONTEXT.at().minusSeconds(1);
    Entry known = EvidenceBook.effective(journal, before).get(0);
    assertEquals(7, ((Evidence.Telemetry) known.evidence()).volts().orElseThrow());
  }

  @Test
  void aCorrectionToAPassIsSettledIntoItsTimes() {
    log(
        "nothing-heard",
        "station=Fen Hill",
        "from=2026-11-07T00:00:00Z",
        "to=2026-11-07T00:09:00Z",
        "way=ear");
    log("correction", "of=1", "pass=2026-11-13T21:10:05Z");
    Evidence.NothingHeard moved = (Evidence.NothingHeard) standing().get(0).evidence();
    assertEquals(Instant.parse("2026-11-13T21:10:05Z"), moved.from());
    assertEquals(Instant.parse("2026-11-13T21:18:36Z"), moved.to());
    assertTrue(moved.way().isPresent());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "of=9 volts=7",
        "of=1 station=Quay",
        "of=1 volts=NaN",
        "of=1 at=2026-11-01T00:00:00Z",
        "of=1",
        "of=1 withdrawn=yes volts=7",
        "of=one volts=7",
        "of=1 volts="
      })
  void aCorrectionThatWouldLeaveAnUnreadableRecordIsRefused(String keys) {
    log("telemetry", "volts=7");
    assertThrows(BadInput.class, () -> log("correction", keys.split(" ", -1)));
    assertEquals(7, volts());
  }

  @Test
  void aStoredCorrectionOfAnUnknownNumberIsBadInput() {
    Evidence correction = new Evidence.Correction(CONTEXT.at(), 5, map("volts=7"));
    journal.add(new Entry(1, CONTEXT.at(), "", "", map("of=5", "volts=7"), correction));
    String told = assertThrows(BadInput.class, this::standing).getMessage();
    assertTrue(told.contains("there is no entry 5"), told);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void theOrderInWhichEntriesAreHandedInDoesNotMatter(long seed) {
    log("telemetry", "volts=7", "at=2026-11-07T00:00:00Z");
    log("telemetry", "volts=8", "at=2026-11-07T00:00:00Z");
    log("correction", "of=1", "volts=6");
    log("correction", "of=3", "volts=5");
    log("correction", "of=2", "withdrawn=yes");
    List<Entry> shuffled = new ArrayList<>(journal);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(standing(), EvidenceBook.effective(shuffled, LATER));
  }
}
