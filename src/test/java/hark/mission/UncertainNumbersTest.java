package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Uncertain;
import hark.problem.Problem;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UncertainNumbersTest {
  private final Problems problems = new Problems();
  private final Span fraction = Span.of(0, 1).orIn("percent", 0.01);

  private Optional<Uncertain> read(String value) {
    YamlTree node =
        YamlTree.parse("a.yaml", "n: " + value + "\n", problems).find("n").orElseThrow();
    return UncertainNumbers.read(node, fraction, problems);
  }

  private Problem onlyProblem() {
    assertEquals(1, problems.list().size(), () -> problems.list().toString());
    return problems.list().get(0);
  }

  @Test
  void everyFormIsRead() {
    assertEquals(Uncertain.of(0.25), read("0.25").orElseThrow());
    assertEquals(new Uncertain.Normal(0.5, 0.1), read("{ mean: 0.5, sd: 0.1 }").orElseThrow());
    assertEquals(new Uncertain.Uniform(0, 1), read("{ min: 0, max: 1 }").orElseThrow());
    assertEquals(new Uncertain.LogNormal(0.2, 2), read("{ median: 0.2, factor: 2 }").orElseThrow());
    assertTrue(problems.isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ".nan",
        "NaN",
        "nan",
        ".inf",
        "1e400",
        "'0.5'",
        "half",
        "[0.5]",
        "{}",
        "{ mean: 0.5 }",
        "{ mean: 0.5, sd: 0 }",
        "{ mean: 0.5, sd: -0.1 }",
        "{ mean: 0.5, max: 1 }",
        "{ min: 0.6, max: 0.5 }",
        "{ min: 0.5, max: 1.5 }",
        "{ median: 0.5, factor: 1 }",
        "{ median: 0.5, factor: .nan }",
        "0x1",
        "1_000",
        "1.2.3",
        "--1"
      })
  void whatIsNoNumberIsOneProblem(String value) {
    assertTrue(read(value).isEmpty());
    int found = problems.list().size();
    assertTrue(found >= 1 && found <= 2, () -> problems.list().toString());
    assertTrue(problems.list().stream().allMatch(p -> p.where().startsWith("a.yaml:1 n")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"29|percent; the key wants 0.29", "'0,29'|with a point", "0.29 percent|bare number"})
  void theLikelyMistakeIsNamed(String value, String mend) {
    assertTrue(read(value).isEmpty());
    assertTrue(onlyProblem().mend().contains(mend), onlyProblem().line());
  }

  @Test
  void numbersArePrintedAsPeopleWriteThem() {
    assertEquals("437.2", Span.print(437.2));
    assertEquals("0.29", Span.print(29 * 0.01));
    assertEquals("100000", Span.print(1e5));
    assertEquals("1.5e-05", Span.print(1.5e-5));
  }
}
