package hark.cli;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.station.HorizonMask;
import hark.station.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a command about the sky is asked: objects through a span, seen from places.
 *
 * @param legs in the order of the objects, each object's in the order of time
 * @param places none where it does not matter who looks
 * @param mission true when objects and places are a mission's
 */
record SkyQuestion(
    Instant from,
    Instant to,
    List<Leg> legs,
    List<Place> places,
    EarthModel earth,
    boolean mission) {

  /** A site and what it sees. */
  record Place(Site site, HorizonMask mask) {}

  /** Legs of several objects, see {@link Leg#of}. */
  static List<Leg> legs(List<ElementSet> sets, Instant from, Instant to, Instant known) {
    Map<String, List<ElementSet>> byObject = new LinkedHashMap<>();
    sets.forEach(set -> byObject.computeIfAbsent(set.objectId(), id -> new ArrayList<>()).add(set));
    return byObject.values().stream()
        .flatMap(ofOne -> Leg.of(ofOne, from, to, known).stream())
        .toList();
  }
}
