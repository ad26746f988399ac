package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.link.LinkBudget;
import hark.link.Uplink;
import hark.station.HorizonMask;
import hark.station.Look;
import hark.station.Station.Polarisation;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tries of commands drawn one by one against the chance that the link states. */
class PlainUplinkReferenceTest {
  private static final int TRIES = 20_000;
  private static final double RANGE = 1_200_000;

  @ParameterizedTest(name = "{0} W")
  @ValueSource(doubles = {0.05, 0.2, 1})
  void asManyArriveAsTheLinkSays(double watts) {
    Look[] looks = new Look[20];
    java.util.Arrays.fill(looks, new Look(120, 40, RANGE, 0));
    PlainPath path = new PlainPath(0, 10, looks, HorizonMask.flat(5));
    PlainUplink up =
        new PlainUplink(
            new PlainUplink.Receiver(436e6, -108, 0, Polarisation.LINEAR, 4),
            new PlainUplink.Sender(watts, 13, 40, Polarisation.RHCP),
            PlainFlaws.NONE);
    PlainLink.Window window = new PlainLink.Window(0, 190, path, 0, path);
    SplittableRandom random = new SplittableRandom(8);
    int arrived = 0;
    for (int k = 0; k < TRIES; k++) {
      arrived += up.arrives(window, 95, 0, random) ? 1 : 0;
    }
    double losses =
        LinkBudget.atmosphereLossDb(40)
            + LinkBudget.polarisationLossDb(Polarisation.RHCP, Polarisation.LINEAR);
    double level = Uplink.receivedDbm(Uplink.eirpDbm(watts, 13), 436e6, RANGE, losses, 0);
    double expected = Uplink.fadedSuccessProbability(level, -108, 4);
    double fourErrors = 4 * Math.sqrt(expected * (1 - expected) / TRIES) + 1e-4;
    assertEquals(expected, (double) arrived / TRIES, fourErrors);
  }
}
