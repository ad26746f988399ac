package hark.document;

import hark.assessment.Assessment;

/** Windows, their geometry and options as JSON. */
final class WindowJson {
  private WindowJson() {}

  static void window(JsonFields out, Assessment.Window window) {
    out.text("id", window.id());
    out.text("station", window.station());
    out.time("aos", window.aos());
    out.time("culmination", window.culmination());
    out.time("los", window.los());
    out.number("maxElevationDeg", window.maxElevationDeg());
    AssessmentJson.array(
        out, "geometry", window.geometry(), (in, pass) -> geometry(in, pass, window.station()));
    out.number("beaconOn", window.beaconOn());
    out.number("beaconOnError", window.beaconOnError());
    out.number("socP25", window.socP25());
    out.number("socP50", window.socP50());
    out.number("socP75", window.socP75());
    out.text("planned", window.planned());
    AssessmentJson.array(out, "options", window.options(), WindowJson::option);
    out.number("minutesSinceSunrise", window.minutesSinceSunrise());
    out.node().put("unattended", window.unattended());
    out.text("notAvailable", window.notAvailable());
  }

  /** As a row of {@code hark passes}. */
  private static void geometry(JsonFields out, Assessment.Geometry pass, String station) {
    out.text("object", pass.object());
    out.text("site", station);
    out.time("aos", pass.aos());
    out.time("culmination", pass.culmination());
    out.time("los", pass.los());
    out.number("maxElevationDeg", pass.maxElevationDeg());
    out.number("aosAzimuthDeg", pass.aosAzimuthDeg());
    out.number("culminationAzimuthDeg", pass.culminationAzimuthDeg());
    out.number("losAzimuthDeg", pass.losAzimuthDeg());
    out.number("culminationRangeKm", pass.culminationRangeKm());
    out.node().put("sunlitAtCulmination", pass.sunlitAtCulmination());
  }

  private static void option(JsonFields out, Assessment.Option option) {
    out.text("procedure", option.procedure());
    out.number("heardThisPass", option.heardThisPass());
    out.number("heardThisPassError", option.heardThisPassError());
    out.number("heardByHorizon", option.heardByHorizon());
    out.number("informationBits", option.informationBits());
    out.number("costHours", option.costHours());
    out.number("hazard", option.hazard());
    out.node().put("rank", option.rank());
    out.text("why", option.why());
    out.text("title", option.title());
    out.number("reach", option.reach().orElse(Double.NaN));
    out.texts("cautions", option.cautions());
  }
}
