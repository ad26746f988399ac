package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.NearestWord;
import hark.problem.Problem;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class YamlTreeTest {
  private final Problems problems = new Problems();

  private YamlTree read(String... lines) {
    return YamlTree.parse("a.yaml", String.join("\n", lines) + "\n", problems);
  }

  private Problem onlyProblem() {
    assertEquals(1, problems.list().size(), () -> problems.list().toString());
    return problems.list().get(0);
  }

  @Test
  void everyNodeKnowsItsLineAndItsPath() {
    YamlTree tree = read("# words", "a:", "  b: 1", "  c:", "    - x", "    - { d: 00005 }");
    YamlTree d = tree.find("a").orElseThrow().find("c").orElseThrow().items().get(1);
    assertEquals("a.yaml:6 a.c[1].d", d.find("d").orElseThrow().where());
    assertEquals("00005", d.find("d").orElseThrow().text());
    assertEquals(2, tree.find("a").orElseThrow().line());
    assertTrue(problems.isEmpty());
  }

  @Test
  void aKeyWrittenTwiceIsNamedAtItsSecondLine() {
    read("a: 1", "b: 2", "a: 3");
    assertEquals("a.yaml:3 a", onlyProblem().where());
    assertTrue(onlyProblem().what().contains("first in line 1"));
  }

  @Test
  void aTabIsAnsweredWithSpaces() {
    read("a:", "\tb: 1");
    assertTrue(onlyProblem().mend().contains("spaces"), onlyProblem().line());
    assertEquals("a.yaml:2", onlyProblem().where());
  }

  @Test
  void anEmptyFileIsAProblemAndNotACrash() {
    YamlTree.parse("a.yaml", "", problems);
    assertEquals("the file is empty", onlyProblem().what());
  }

  @Test
  void tenMegabytesOfNoiseAreRefusedAtOnce() {
    SplittableRandom random = new SplittableRandom(1);
    StringBuilder noise = new StringBuilder();
    for (int i = 0; i < 10_000_000; i++) {
      noise.append((char) random.nextInt(1, 0xD000));
    }
    String text = noise.toString();
    assertTimeout(Duration.ofMillis(200), () -> YamlTree.parse("noise", text, problems));
    assertTrue(onlyProblem().what().startsWith("10000000 characters"));
  }

  @Test
  void shortNoiseIsNotYaml() {
    for (int seed = 0; seed < 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      StringBuilder noise = new StringBuilder();
      for (int i = 0; i < 200; i++) {
        noise.append((char) random.nextInt(1, 256));
      }
      YamlTree tree = YamlTree.parse("noise", noise.toString(), problems);
      assertTrue(tree.isNothing() || tree.entries().isEmpty(), "seed " + seed);
    }
    assertEquals(Problems.MAX_TOLD, problems.list().size());
    assertEquals(300, problems.count());
  }

  @Test
  void aliasesCannotSwellASmallFile() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String before = "*a" + (i - 1);
      bomb.append("a" + i + ": &a" + i + " [");
      bomb.append(String.join(", ", List.of(before, before, before, before))).append("]\n");
    }
    assertTimeout(Duration.ofSeconds(5), () -> read(bomb.toString()));
    assertTrue(onlyProblem().mend().contains("fewer aliases"), onlyProblem().line());
  }

  @Test
  void anAliasOfItselfEndsInAProblem() {
    assertTimeout(Duration.ofSeconds(5), () -> read("a: &a [*a, *a]"));
    assertTrue(problems.list().get(0).what().contains("deeper"), problems.list().toString());
  }

  @Test
  void aTagNamesNoClass() {
    read("a: !!java.util.Date 2020-01-01");
    assertTrue(onlyProblem().what().contains("tag"), onlyProblem().line());
  }

  @Test
  void theNearestWordIsTheOneMeant() {
    List<String> known = List.of("frequency_MHz", "interval_s", "form");
    assertEquals("frequency_MHz", NearestWord.find("frequency_Hz", known).orElseThrow());
    assertEquals("form", NearestWord.find("from", known).orElseThrow());
    assertTrue(NearestWord.find("colour", known).isEmpty());
  }

  @Test
  void anUnknownKeyIsNamedWithItsNeighbour() {
    YamlMap map = YamlMap.of(read("mass_kg: 1", "aera_m2: 2"), problems);
    map.require("mass_kg");
    map.get("area_m2");
    map.finish();
    assertEquals("did you mean 'area_m2'?", onlyProblem().mend());
    assertEquals("a.yaml:2 aera_m2", onlyProblem().where());
  }
}
