package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.assessment.AssessmentFixture;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every field of the contract is there, of the right sort, with its name unchanged. */
class AssessmentJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static JsonNode json() throws IOException {
    return MAPPER.readTree(AssessmentJson.text(AssessmentFixture.sandpiper().build()));
  }

  @Test
  void everyFieldOfTheContractIsThere() throws IOException {
    try (InputStream in = AssessmentJsonTest.class.getResourceAsStream("assess-contract.json")) {
      List<String> missing = new ArrayList<>();
      compare("", MAPPER.readTree(in), json(), missing);
      assertEquals(List.of(), missing);
    }
  }

  /** Walks the contract's shape; {@code null} in it stands for "a value or null". */
  private static void compare(String path, JsonNode shape, JsonNode found, List<String> missing) {
    if (found == null || found.isMissingNode()) {
      missing.add(path + " is not there");
    } else if (shape.isObject()) {
      shape
          .properties()
          .forEach(
              f -> compare(path + "/" + f.getKey(), f.getValue(), found.get(f.getKey()), missing));
    } else if (shape.isArray()) {
      if (!found.isArray() || found.isEmpty()) {
        missing.add(path + " is not an array with something in it");
      }
      found.forEach(each -> compare(path + "[]", shape.get(0), each, missing));
    } else if (!shape.isNull() && shape.getNodeType() != found.getNodeType()) {
      missing.add(path + " is " + found.getNodeType() + ", not " + shape.getNodeType());
    }
  }

  @Test
  void explanationsAndRemainderSumToOne() throws IOException {
    double sum = json().get("remainder").doubleValue();
    for (JsonNode each : json().get("explanations")) {
      sum += each.get("posterior").doubleValue();
    }
    double sixDigits = 1e-5;
    assertEquals(1, sum, sixDigits);
  }

  @Test
  void timesAreRoundedToTheMillisecondAndEndInZ() throws IOException {
    Instant now = Instant.parse("2026-11-14T09:29:59.999600Z");
    JsonNode json = AssessmentJson.of(AssessmentFixture.sandpiper().now(now).build());
    assertEquals("2026-11-14T09:30:00.000Z", json.get("now").textValue());
  }

  @Test
  void numbersHaveSixDigitsAndWhatDoesNotExistIsNull() {
    JsonNode json =
        AssessmentJson.of(
            AssessmentFixture.sandpiper().remainder(1.0 / 3).misfit(Double.NaN).build());
    assertEquals("0.333333", json.get("remainder").asText());
    assertTrue(json.get("misfit").isNull());
  }

  @Test
  void emptyChoicesAreNull() throws IOException {
    JsonNode cause = json().get("causes").get(2);
    assertTrue(cause.get("inseparableGroup").isNull());
    assertTrue(cause.get("selfRecovery").get("p10").isNull());
    assertTrue(json().get("windows").get(4).get("planned").isNull());
  }
}
