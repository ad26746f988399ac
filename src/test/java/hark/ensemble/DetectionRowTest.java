package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.link.Detector;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class DetectionRowTest {
  @Test
  void manyNodesAtOnceAgreeWithTheNormalDistributionOneByOne() {
    int nodes = 200;
    double width = 2.5;
    Detector detector = new Detector(4, width);
    float[] levels = new float[2 * nodes];
    float[] gate = new float[2 * nodes];
    for (int n = 0; n < nodes; n++) {
      levels[n] = -40 + 0.4f * n;
      levels[nodes + n] = levels[n] + 1;
      gate[nodes + n] = n % 3 / 2f;
    }
    levels[0] = -1e4f;
    levels[nodes] = -1e4f;
    float[] miss = new float[nodes];
    Arrays.fill(miss, 0.5f);
    new DetectionRow(nodes, detector).at(levels, 0, 0.25f, 3).miss(gate, nodes, miss);
    NormalDistribution normal = new NormalDistribution();
    for (int n = 0; n < nodes; n++) {
      double level = n == 0 ? -1e4 : levels[n] + 0.25 - 3;
      double noticed = gate[nodes + n] * normal.cumulativeProbability((level - 4) / width);
      assertEquals(0.5 * (1 - noticed), miss[n], 3e-7, "level " + level);
    }
  }

  @Test
  void belowTheMaskALevelIsThatOfTheNeighbourInTime() {
    float none = HearingTable.BELOW_MASK;
    float[] levels = HearingTable.levels(new float[] {none, none, none, 5, 7, 6, none, 6}, 2);
    assertEquals(5, levels[1]);
    assertEquals(7, levels[2]);
    assertEquals(7, levels[6]);
    assertEquals(-1e4f, levels[0]);
  }
}
