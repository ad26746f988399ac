package hark.fault;

/** Results of a two-place operation on nodes, all kept. */
final class Memo {
  private long[] keys = new long[1024];
  private int[] values = new int[1024];
  private int size;

  /** The result kept for this pair, or −1. Pairs of two zeros are never asked for. */
  int get(int a, int b) {
    long key = key(a, b);
    int mask = keys.length - 1;
    for (int slot = hash(key) & mask; keys[slot] != 0; slot = (slot + 1) & mask) {
      if (keys[slot] == key) {
        return values[slot];
      }
    }
    return -1;
  }

  void put(int a, int b, int value) {
    if (2 * (size + 1) > keys.length) {
      grow();
    }
    insert(key(a, b), value);
    size++;
  }

  private void insert(long key, int value) {
    int mask = keys.length - 1;
    int slot = hash(key) & mask;
    while (keys[slot] != 0) {
      slot = (slot + 1) & mask;
    }
    keys[slot] = key;
    values[slot] = value;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldValues = values;
    keys = new long[2 * oldKeys.length];
    values = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != 0) {
        insert(oldKeys[i], oldValues[i]);
      }
    }
  }

  private static long key(int a, int b) {
    return ((long) a << 32) | (b & 0xFFFFFFFFL);
  }

  private static int hash(long key) {
    long mixed = key * 0x9E3779B97F4A7C15L;
    return (int) (mixed >>> 32);
  }
}
