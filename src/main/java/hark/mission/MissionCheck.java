package hark.mission;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What reading a mission folder found.
 *
 * @param mission empty when there is any problem
 * @param problems all at once, in the order of the files
 * @param warnings sensible to know, not wrong
 * @param notes what the program made of the folder by itself; nothing to mend
 * @param defaults keys that were not written and what is taken for them
 * @param notComputed keys that are read and checked while nothing is computed from them yet
 * @param numbers of the spacecraft, in the order read; none when there is a problem
 */
public record MissionCheck(
    Optional<Mission> mission,
    List<Problem> problems,
    List<Problem> warnings,
    List<Problem> notes,
    List<DefaultUsed> defaults,
    List<String> notComputed,
    List<MissionNumber> numbers) {
  /** The mission; throws {@link BadInput} with every problem when there is none. */
  public Mission orThrow() {
    return mission.orElseThrow(() -> new BadInput(problems));
  }
}
