package hark.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hark.orbit.ReferenceTable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Benchmark trees of the Aralia set, which lie beside the project and are not part of it. */
class AraliaReferenceTest {
  private static final Path MODELS =
      Path.of("..", "shared", "reference", "faulttrees", "models").toAbsolutePath();

  static List<Map<String, String>> rows() {
    return ReferenceTable.read("faulttrees/aralia.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void probabilityAndCutSetsAreThePublishedOnes(Map<String, String> row) throws Exception {
    Path model = MODELS.resolve(row.get("model") + ".xml");
    assumeTrue(Files.exists(model), "benchmark models are not beside the project");
    FaultTree tree = MefReader.read(model, "r1");
    assertEquals(Integer.parseInt(row.get("basic_events")), tree.events().size());
    Solution solved = FaultTrees.solve(tree, 9999);
    double expected = ReferenceTable.number(row, "probability");
    assertEquals(expected, solved.probability(), expected * 1e-9);
    assertEquals(Long.parseLong(row.get("minimal_cut_sets")), solved.cutSets().count());
    assertEquals(Math.min(1000, solved.cutSets().count()), solved.cutSets().sets().size());
    String[] byOrder =
        row.get("by_order").isEmpty() ? new String[0] : row.get("by_order").split(" ");
    for (int order = 1; order <= byOrder.length; order++) {
      long found = solved.cutSets().byOrder().getOrDefault(order, 0L);
      assertEquals(Long.parseLong(byOrder[order - 1]), found, "order " + order);
    }
  }
}
