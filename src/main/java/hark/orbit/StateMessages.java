package hark.orbit;

import hark.problem.BadInput;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.orekit.data.DataSource;
import org.orekit.errors.OrekitException;
import org.orekit.errors.OrekitIllegalArgumentException;
import org.orekit.errors.OrekitIllegalStateException;
import org.orekit.files.ccsds.definitions.FrameFacade;
import org.orekit.files.ccsds.ndm.NdmConstituent;
import org.orekit.files.ccsds.ndm.ParserBuilder;
import org.orekit.files.ccsds.ndm.odm.CartesianCovariance;
import org.orekit.files.ccsds.ndm.odm.OdmCommonMetadata;
import org.orekit.files.ccsds.ndm.odm.SpacecraftParameters;
import org.orekit.files.ccsds.ndm.odm.oem.Oem;
import org.orekit.files.ccsds.ndm.odm.oem.OemSatelliteEphemeris;
import org.orekit.files.ccsds.ndm.odm.oem.OemSegment;
import org.orekit.files.ccsds.ndm.odm.opm.Opm;
import org.orekit.frames.Frame;
import org.orekit.utils.TimeStampedPVCoordinates;

/**
 * Reads states: CCSDS OPM (one state) and OEM (a row of states), KVN or XML. Source: CCSDS
 * 502.0-B-3, <i>Orbit Data Messages</i>, sections 3 and 5.
 */
final class StateMessages {
  private static final Pattern KIND =
      Pattern.compile("CCSDS_O[PE]M_VERS|<o[pe]m[\\s>]", Pattern.CASE_INSENSITIVE);

  private static final Pattern FRAME =
      Pattern.compile("REF_FRAME\\s*[=>]\\s*([^\\s<]+)", Pattern.CASE_INSENSITIVE);

  /**
   * Unless the message asks for more, four states and their velocities are used between two: right
   * to a metre at steps of four minutes, and calm where velocities are rounded.
   */
  private static final int INTERPOLATION_DEGREE = 3;

  private final String fileName;
  private final String text;
  private final DragBody body;
  private final EarthModel earth;
  private final List<ElementSet> sets = new ArrayList<>();

  private StateMessages(String fileName, String text, DragBody body, EarthModel earth) {
    this.fileName = fileName;
    this.text = text;
    this.body = body;
    this.earth = earth;
  }

  /** True when a text begins like such a message. */
  static boolean isIn(String start) {
    return KIND.matcher(start).find();
  }

  static List<ElementSet> parse(String fileName, String text, DragBody body, EarthModel earth) {
    MessageText.refuseDanger(fileName, text, "give one state, or a shorter row of them");
    return new StateMessages(fileName, text, body, earth).read();
  }

  private List<ElementSet> read() {
    try {
      for (NdmConstituent<?, ?> message : messages()) {
        if (message instanceof Opm opm) {
          one(opm);
        } else if (message instanceof Oem oem) {
          oem.getSatellites().values().forEach(this::row);
        }
      }
    } catch (OrekitException | OrekitIllegalArgumentException | OrekitIllegalStateException e) {
      throw refusal(e.getMessage());
    } catch (UnsupportedOperationException e) {
      throw needsData(e.getMessage());
    }
    if (sets.isEmpty()) {
      throw BadInput.of("the message holds no state", fileName, "give an OPM or an OEM");
    }
    return List.copyOf(sets);
  }

  private List<NdmConstituent<?, ?>> messages() {
    DataSource source = new DataSource(fileName, () -> new StringReader(text));
    ParserBuilder builder =
        new ParserBuilder(new MessageContext(earth))
            .withMu(OrbitShape.MU)
            .withDefaultMass(body.massKg())
            .withDefaultInterpolationDegree(INTERPOLATION_DEGREE);
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.contains("<ndm")) {
      return List.copyOf(builder.buildNdmParser().parseMessage(source).getConstituents());
    }
    boolean single = lower.contains("ccsds_opm_vers") || lower.contains("<opm");
    return List.of(
        single
            ? builder.buildOpmParser().parseMessage(source)
            : builder.buildOemParser().parseMessage(source));
  }

  private BadInput refusal(String why) {
    String frame = frame();
    return why.contains(frame) && !frame.isEmpty()
        ? needsData(why)
        : BadInput.of(
            "this orbit message cannot be read: " + why,
            fileName,
            "compare it with CCSDS 502.0-B or export it again");
  }

  private BadInput needsData(String why) {
    return BadInput.of(
        "its states are in frame " + frame() + ", which needs data that is not here (" + why + ")",
        fileName,
        "ask for the states in GCRF, EME2000, TEME or ITRF, about the Earth");
  }

  private String frame() {
    Matcher found = FRAME.matcher(text);
    return found.find() ? found.group(1) : "";
  }

  private void one(Opm opm) {
    if (opm.hasManeuvers()) {
      throw BadInput.of(
          "the message plans " + opm.getNbManeuvers() + " manoeuvre(s), which are not followed",
          fileName,
          "give the state after the last of them");
    }
    SpacecraftParameters given = opm.getData().getSpacecraftParametersBlock();
    TimeStampedPVCoordinates pv =
        frame(opm.getMetadata())
            .getTransformTo(earth.teme(), opm.getDate())
            .transformPVCoordinates(opm.getPVCoordinates());
    CartesianCovariance covariance = opm.getData().getCovarianceBlock();
    StatePath path =
        StatePath.of(pv.getDate().toInstant(earth.scales()), StateForces.six(pv), earth)
            .pulling(body(given));
    if (covariance != null) {
      path = path.knownTo(StateCovariance.read(covariance, pv, earth, fileName));
    }
    sets.add(path.elementSet(id(opm.getMetadata()), name(opm.getMetadata()), fileName));
  }

  private DragBody body(SpacecraftParameters given) {
    if (given == null) {
      return body;
    }
    return new DragBody(
        or(given.getMass(), body.massKg()),
        or(given.getDragArea(), body.areaSquareMeters()),
        or(given.getDragCoeff(), body.dragCoefficient()),
        body.factor());
  }

  private static double or(double given, double otherwise) {
    return given > 0 ? given : otherwise; // NaN where the message does not say
  }

  private void row(OemSatelliteEphemeris satellite) {
    List<OemSegment> segments = satellite.getSegments();
    segments.forEach(segment -> frame(segment.getMetadata()));
    OdmCommonMetadata meta = segments.get(0).getMetadata();
    StatePath path = StateRow.of(segments, earth, fileName).pulling(body);
    sets.add(path.elementSet(id(meta), name(meta), fileName));
  }

  private Frame frame(OdmCommonMetadata meta) {
    if (meta.getCenter().getBody() == null
        || !"EARTH".equalsIgnoreCase(meta.getCenter().getName())) {
      throw BadInput.of(
          "its states are about " + meta.getCenter().getName() + ", only the Earth is known",
          fileName,
          "ask for states about the Earth");
    }
    FrameFacade facade = meta.getReferenceFrame();
    if (facade.asFrame() == null) {
      throw needsData("this frame hangs on another object");
    }
    return facade.asFrame();
  }

  private static String id(OdmCommonMetadata meta) {
    String id = meta.getObjectID();
    return id == null || id.isBlank() || id.equalsIgnoreCase("UNKNOWN") ? meta.getObjectName() : id;
  }

  private static java.util.Optional<String> name(OdmCommonMetadata meta) {
    return java.util.Optional.ofNullable(meta.getObjectName());
  }
}
