package hark.console;

import hark.assessment.AssessmentFixture;
import java.nio.file.Path;
import java.time.InstantSource;

/**
 * Serves the invented mission of these tests, which works nothing out, for those who work on the
 * page: {@code FixtureServe PORT [TIME [SPEED]]} takes the files from {@code web/}.
 */
final class FixtureServe {
  private FixtureServe() {}

  public static void main(String[] args) throws Exception {
    Rehearsal clock =
        new Rehearsal(
            InstantSource.system(),
            args.length > 1 ? java.time.Instant.parse(args[1]) : AssessmentFixture.NOW,
            args.length > 2 ? Double.parseDouble(args[2]) : 1);
    FixtureModel model = args.length > 1 ? FixtureModel.rehearsed(clock) : new FixtureModel(true);
    ConsoleSettings settings = ConsoleSettings.of("127.0.0.1", Integer.parseInt(args[0]));
    ConsoleServer.start(model, settings.withWebFolder(Path.of("web").toAbsolutePath()));
  }
}
