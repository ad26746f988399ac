package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class YamlEditTest {
  private static final FolderSource DEMO = ResourceFolder.of("hark/demo");
  private static final String TEXT =
      """
      # head
      a: 1        # why
      b: { c: 2, d: [1, 2] }
      list:
        - { name: one, x: 1 }
        - name: two
          x: 2   # kept
      empty:
      tail:
        deep:
          e: "q"
      # foot
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a              | 9              | a: 9        # why",
        "b.c            | { mean: 2, sd: 1 } | b: { c: { mean: 2, sd: 1 }, d: [1, 2] }",
        "b.n            | 7              | b: { c: 2, d: [1, 2], n: 7 }",
        "list[one].x    | 5              | - { name: one, x: 5 }",
        "list[two].x    | 5              | x: 5   # kept",
        "list[1].y      | 5              | x: 2   # kept%    y: 5",
        "empty          | 5              | empty: 5",
        "empty.inner    | 5              | empty: { inner: 5 }",
        "tail.deep.e    | r              | e: r",
        "tail.deep.f    | 5              | e: \"q\"%    f: 5",
        "tail.deep      | 5              | tail:%  deep: 5",
        "new.inner      | 5              | e: \"q\"%new:%  inner: 5"
      })
  void oneKeyIsSetAndTheRestStays(String key, String value, String expected) {
    String edited = YamlEdit.set("x.yaml", TEXT, key, value);
    assertTrue(edited.contains(expected.replace('%', '\n')), edited);
    assertTrue(edited.startsWith("# head\n") && edited.endsWith("# foot\n"), edited);
  }

  @Test
  void aCommentThatFollowsABlockIsKept() {
    String edited = YamlEdit.set("x.yaml", "m:\n  a: 1\n\n# next\nz: 2\n", "m.b", "3");
    assertEquals("m:\n  a: 1\n  b: 3\n\n# next\nz: 2\n", edited);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "list[three].x | 1 | no item 'three'",
        "a.b           | 1 | has no key 'b'",
        "a..b          | 1 | no path of keys",
        "b.c           | 1, z: 3 | cannot be set without touching something else",
        "a             | [1 | not YAML"
      })
  void whatCannotBeSetIsRefusedInWords(String key, String value, String words) {
    BadInput bad = assertThrows(BadInput.class, () -> YamlEdit.set("x.yaml", TEXT, key, value));
    assertTrue(bad.problems().get(0).what().contains(words), bad.problems().toString());
  }

  @Test
  void anAliasIsLeftToPeople() {
    String text = "a: &x { n: 1 }\nb: *x\n";
    assertThrows(BadInput.class, () -> YamlEdit.set("x.yaml", text, "b.n", "2"));
  }

  static List<String> numbers() {
    return MissionNumbers.list(DEMO).stream().map(MissionNumber::key).toList();
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void everyNumberOfTheDemoIsSetAsAnOverrideWouldSetIt(String key) {
    MissionNumber was =
        MissionNumbers.list(DEMO).stream()
            .filter(n -> n.key().equals(key))
            .findFirst()
            .orElseThrow();
    String value =
        was.whole() ? "" + Math.round(was.greatest()) : "" + (was.least() + was.mean()) / 2;
    MissionCheck overridden = Missions.check(DEMO, Map.of(key, value));
    String text = DEMO.text("mission.yaml").orElseThrow();
    String edited = YamlEdit.set("mission.yaml", text, key, value);
    MissionCheck read = Missions.check(new EditedFolder(DEMO, Map.of("mission.yaml", edited)));
    assertEquals(overridden.numbers(), read.numbers());
    assertEquals(
        overridden.problems().stream().map(p -> p.what()).toList(),
        read.problems().stream().map(p -> p.what()).toList());
  }
}
