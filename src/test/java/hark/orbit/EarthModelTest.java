package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orekit.data.DirectoryCrawler;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.frames.Transform;
import org.orekit.utils.IERSConventions;
import org.orekit.utils.PVCoordinates;

class EarthModelTest {
  private static final ElementSet SET =
      ElementSets.ofLines(
          "1 25544U 98067A   19343.69339541  .00001764  00000-0  38792-4 0  9991",
          "2 25544  51.6439 211.2001 0007417  17.6667  85.6398 15.50103472202482");

  @TempDir private Path folder;

  @Test
  void aFolderTurnsTheEarthAsOrekitsTransformDoes() throws IOException {
    writeData();
    EarthModel earth = EarthModel.fromFolder(folder);
    assertTrue(earth.hasOrientation());
    LazyLoadedDataContext context = new LazyLoadedDataContext();
    context.getDataProvidersManager().addProvider(new DirectoryCrawler(folder.toFile()));
    Trajectory trajectory = Trajectory.of(SET, earth);
    double twoMeters = 2;
    double twoCentimetersPerSecond = 0.02;
    for (int hours = 0; hours < 48; hours++) {
      Instant time = SET.epoch().plusSeconds(3600L * hours);
      State found = trajectory.earthFixedAt(time).orElseThrow();
      Transform transform =
          context
              .getFrames()
              .getTEME()
              .getTransformTo(
                  context.getFrames().getITRF(IERSConventions.IERS_2010, true), earth.date(time));
      PVCoordinates expected = transform.transformPVCoordinates(pv(trajectory.temeAt(time)));
      assertEquals(0, expected.getPosition().distance(position(found)), twoMeters);
      assertEquals(0, expected.getVelocity().distance(velocity(found)), twoCentimetersPerSecond);
    }
  }

  @Test
  void theTablesMoveTheGroundByWhatTheySay() throws IOException {
    writeData();
    State with =
        Trajectory.of(SET, EarthModel.fromFolder(folder)).earthFixedAt(SET.epoch()).orElseThrow();
    State without =
        Trajectory.of(SET, EarthModel.bundled()).earthFixedAt(SET.epoch()).orElseThrow();
    // 0.3 s of UT1 − UTC at 6780 km from the centre and this latitude: between 50 and 150 m
    double moved = position(with).distance(position(without));
    assertTrue(moved > 50 && moved < 160, "moved " + moved + " m");
  }

  @Test
  void theBundledModelNeedsNoFile() {
    assertFalse(EarthModel.bundled().hasOrientation());
  }

  @Test
  void aUselessFolderIsRefused() {
    assertTrue(
        assertThrows(BadInput.class, () -> EarthModel.fromFolder(folder))
            .getMessage()
            .contains("cannot be used as Orekit data"));
    assertThrows(BadInput.class, () -> EarthModel.fromFolder(folder.resolve("none")));
  }

  /** Made-up tables in the public formats: UT1 − UTC 0.3 s, pole 0.1″ and 0.3″. */
  private void writeData() throws IOException {
    Files.writeString(
        folder.resolve("tai-utc.dat"),
        " 2017 JAN  1 =JD 2457754.5  TAI-UTC=  37.0       S + (MJD - 41317.) X 0.0      S\n");
    StringBuilder rows = new StringBuilder();
    for (int mjd = 58820; mjd < 58850; mjd++) {
      var day = java.time.LocalDate.of(1858, 11, 17).plusDays(mjd);
      rows.append(
          String.format(
              Locale.ROOT,
              "%2d%2d%2d %8.2f I  0.100000 0.000090  0.300000 0.000090  I 0.3000000 0.0000100"
                  + "  0.5000 0.0100  I     0.000    0.300     0.000    0.300"
                  + "  0.100000  0.300000  0.3000000     0.000     0.000  \n",
              day.getYear() % 100,
              day.getMonthValue(),
              day.getDayOfMonth(),
              (double) mjd));
    }
    Files.writeString(folder.resolve("finals2000A.all"), rows.toString());
  }

  private static PVCoordinates pv(java.util.Optional<State> state) {
    return new PVCoordinates(position(state.orElseThrow()), velocity(state.orElseThrow()));
  }

  private static Vector3D position(State state) {
    return new Vector3D(state.xMeters(), state.yMeters(), state.zMeters());
  }

  private static Vector3D velocity(State state) {
    return new Vector3D(
        state.vxMetersPerSecond(), state.vyMetersPerSecond(), state.vzMetersPerSecond());
  }
}
