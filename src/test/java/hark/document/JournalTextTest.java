package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.evidence.Entry;
import hark.evidence.EvidenceContext;
import hark.evidence.EvidenceText;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JournalTextTest {
  private static final Instant AT = Instant.parse("2026-10-09T12:00:00Z");
  private static final List<Entry> ENTRIES =
      List.of(note(1, "lead", "wind, \"strong\"\nand wet"), note(2, "=cmd|' /C calc'!A0", "plain"));

  private static Entry note(int number, String who, String text) {
    Map<String, String> keys = Map.of("at", AT.toString(), "text", text);
    return new Entry(
        number,
        AT.plusSeconds(60),
        who,
        "",
        keys,
        EvidenceText.parse("note", keys, EvidenceContext.alreadyChecked(AT)));
  }

  @Test
  void csvIsQuotedAfterRfc4180() {
    String csv = JournalText.csv(ENTRIES);
    assertTrue(csv.startsWith("number,at,kind,keys,who,note,recordedAt\r\n1,"), csv);
    assertTrue(csv.contains("\"\"strong\\\"\""), csv);
    assertEquals(3, csv.split("\r\n").length);
  }

  @Test
  void aCellThatASpreadsheetWouldRunIsMadeText() {
    assertTrue(JournalText.csv(ENTRIES).contains("'=cmd|"), JournalText.csv(ENTRIES));
  }

  @Test
  void everyLineIsAnEntryAndTheDocumentHoldsTheSame() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode whole = mapper.readTree(JournalText.json(ENTRIES)).get("entries");
    List<String> lines = JournalText.lines(ENTRIES).lines().toList();
    assertEquals(2, lines.size());
    for (int i = 0; i < 2; i++) {
      assertEquals(whole.get(i), mapper.readTree(lines.get(i)));
    }
    assertEquals("wind, \"strong\"\nand wet", whole.get(0).at("/keys/text").asText());
    assertEquals("2026-10-09T12:01:00.000Z", whole.get(0).get("recordedAt").asText());
  }
}
