package hark.journal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;

/**
 * The hash chain: SHA-256 over the previous hash and every field of a row, each with its length
 * before it, so that no two rows read alike. Pure.
 */
final class Chain {
  /** Length of a hash, bytes. */
  static final int HASH_BYTES = 32;

  private Chain() {}

  /** What stands before the first row. */
  static byte[] start() {
    return new byte[HASH_BYTES];
  }

  static byte[] hash(byte[] previous, Row row) {
    MessageDigest digest = sha256();
    digest.update(previous);
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(row.number()).array());
    List<String> fields =
        List.of(row.recordedAt(), row.at(), row.who(), row.note(), row.kind(), row.keys());
    for (String field : fields) {
      byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
      digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
      digest.update(bytes);
    }
    return digest.digest();
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
