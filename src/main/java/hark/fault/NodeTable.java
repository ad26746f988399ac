package hark.fault;

import hark.problem.BadInput;
import java.util.Arrays;
import java.util.BitSet;

/**
 * Nodes of a diagram, each (variable, low, high) kept once. 0 and 1 are the two leaves. Children
 * always have smaller numbers than their parents, so that a pass in order of numbers is a pass from
 * the leaves to the root.
 */
final class NodeTable {
  /** Nodes of one diagram; about 100 MB with its tables. */
  static final int MAX_NODES = 5_000_000;

  /** Variable of the leaves: after all others. */
  static final int LEAF = Integer.MAX_VALUE;

  private int[] variable = new int[1024];
  private int[] low = new int[1024];
  private int[] high = new int[1024];
  private int[] slots = new int[4096];
  private int size = 2;

  private final int most;

  NodeTable() {
    this(MAX_NODES);
  }

  /** A table that refuses to grow beyond {@code most} nodes. */
  NodeTable(int most) {
    this.most = most;
    variable[0] = LEAF;
    variable[1] = LEAF;
  }

  int variable(int node) {
    return variable[node];
  }

  int low(int node) {
    return low[node];
  }

  int high(int node) {
    return high[node];
  }

  int size() {
    return size;
  }

  /** The node with these parts, made if there is none yet. */
  int node(int var, int lowChild, int highChild) {
    int mask = slots.length - 1;
    int slot = hash(var, lowChild, highChild) & mask;
    while (slots[slot] != 0) {
      int found = slots[slot];
      if (variable[found] == var && low[found] == lowChild && high[found] == highChild) {
        return found;
      }
      slot = (slot + 1) & mask;
    }
    return add(var, lowChild, highChild, slot);
  }

  /** The node and all below it. */
  BitSet reachedFrom(int root) {
    BitSet reached = new BitSet(root + 1);
    reached.set(root);
    for (int node = root; node >= 2; node--) {
      if (reached.get(node)) {
        reached.set(low[node]);
        reached.set(high[node]);
      }
    }
    return reached;
  }

  private int add(int var, int lowChild, int highChild, int slot) {
    if (size >= most) {
      throw BadInput.of(
          "the fault tree needs a diagram of more than " + most + " nodes",
          "fault tree",
          "put gates that share events next to each other, or split the tree");
    }
    if (size == variable.length) {
      variable = Arrays.copyOf(variable, 2 * size);
      low = Arrays.copyOf(low, 2 * size);
      high = Arrays.copyOf(high, 2 * size);
    }
    variable[size] = var;
    low[size] = lowChild;
    high[size] = highChild;
    slots[slot] = size;
    size++;
    if (2 * size > slots.length) {
      rehash();
    }
    return size - 1;
  }

  private void rehash() {
    slots = new int[2 * slots.length];
    int mask = slots.length - 1;
    for (int node = 2; node < size; node++) {
      int slot = hash(variable[node], low[node], high[node]) & mask;
      while (slots[slot] != 0) {
        slot = (slot + 1) & mask;
      }
      slots[slot] = node;
    }
  }

  private static int hash(int a, int b, int c) {
    long mixed = (a * 0x9E3779B97F4A7C15L + b) * 0xC2B2AE3D27D4EB4FL + c;
    mixed *= 0x165667B19E3779F9L;
    return (int) (mixed >>> 32);
  }
}
