package hark.mission;

import java.util.Arrays;

/** Paths written in a mission file, with forward slashes, inside the folder. */
final class RelativePath {
  private RelativePath() {}

  /** False for absolute paths, drive letters, back-slashes and any step upwards. */
  static boolean staysInside(String path) {
    return !path.isBlank()
        && !path.startsWith("/")
        && path.indexOf('\\') < 0
        && path.indexOf(':') < 0
        && path.chars().noneMatch(Character::isISOControl)
        && Arrays.stream(path.split("/", -1))
            .noneMatch(step -> step.equals("..") || step.isEmpty());
  }
}
