package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** OMM as lines of keys and values and as XML; layout of CCSDS 502.0-B-3 and 505.0-B-3. */
class OmmMessagesTest {
  private static final ElementSet SET =
      ElementSets.parse(
              "set",
              """
              A NAME
              1 25544U 98067A   19343.69339541  .00001764  00000-0  38792-4 0  9991
              2 25544  51.6439 211.2001 0007417  17.6667  85.6398 15.50103472202482
              """)
          .get(0);

  private static final String KVN =
      ElementText.omm(SET, Instant.parse("2026-01-01T00:00:00Z"), "a remark");

  /** The keys of a KVN as elements. */
  private static String xml(String kvn) {
    StringBuilder body = new StringBuilder("<omm id=\"CCSDS_OMM_VERS\" version=\"3.0\"><body>");
    for (String line : kvn.lines().toList()) {
      int equals = line.indexOf('=');
      if (equals > 0 && !line.startsWith(OmmKvn.FIRST_KEY)) {
        String key = line.substring(0, equals).strip();
        body.append('<').append(key).append('>').append(line.substring(equals + 1).strip());
        body.append("</").append(key).append(">\n");
      }
    }
    return body + "</body></omm>";
  }

  private static String problem(String text) {
    return assertThrows(BadInput.class, () -> ElementSets.parse("f", text)).getMessage();
  }

  @Test
  void aSetWrittenAsKeysAndValuesIsReadBackTheSame() {
    assertEquals(List.of(SET), ElementSets.parse("f", KVN));
  }

  @Test
  void unitsInBracketsArePassedOver() {
    String units = KVN.replaceAll("(?m)^(MEAN_MOTION +=.*)$", "$1 [rev/day]");
    assertTrue(units.contains("[rev/day]"));
    assertEquals(List.of(SET), ElementSets.parse("f", units));
  }

  @Test
  void oneMessageAsXmlAndSeveralInOneFileAreRead() {
    assertEquals(List.of(SET), ElementSets.parse("f", xml(KVN)));
    String two = "<?xml version=\"1.0\"?><ndm>" + xml(KVN) + xml(KVN) + "</ndm>";
    assertEquals(List.of(SET, SET), ElementSets.parse("f", two));
    assertEquals(List.of(SET, SET), ElementSets.parse("f", KVN + KVN));
  }

  @Test
  void nineDigitNumbersAreKept() {
    String nine = KVN.replace("= 25544", "= 799500123");
    assertEquals("799500123", ElementSets.parse("f", nine).get(0).objectId());
    ElementSet set = ElementSets.parse("f", nine).get(0);
    assertTrue(
        assertThrows(BadInput.class, () -> ElementText.twoLines(set))
            .getMessage()
            .contains("write an OMM instead"));
  }

  @Test
  void allMissingKeysOfAllMessagesAreTold() {
    String first = KVN.replace("ECCENTRICITY", "ECC");
    String second = KVN.replace("BSTAR", "DRAG");
    String told = problem(first + second);
    assertTrue(told.contains("f:1: ECCENTRICITY is missing"), told);
    assertTrue(told.contains("BSTAR is missing"), told);
    assertTrue(problem(xml(first)).contains("ECCENTRICITY is missing"));
  }

  @Test
  void anOrbitInAnotherFrameOrTheoryIsRefused() {
    assertTrue(problem(KVN.replace("= TEME", "= GCRF")).contains("only TEME"));
    assertTrue(problem(KVN.replace("= SGP4", "= DSST")).contains("only SGP4"));
  }

  @Test
  void documentTypesAndDepthAreRefused() {
    String evil = "<!DOCTYPE ndm [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><ndm>&x;</ndm>";
    assertTrue(problem(evil).contains("document type"), problem(evil));
    assertTrue(problem("<a>".repeat(60)).contains("deeper"));
    assertTrue(problem("<ndm><omm>").contains("not XML"));
    assertTrue(problem("<ndm/>").contains("no omm"));
  }
}
