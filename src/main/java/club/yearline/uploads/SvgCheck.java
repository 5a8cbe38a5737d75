package club.yearline.uploads;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads a drawing to its end and refuses whatever is not on the list of what draws: no document
 * type, no entities, no scripts, no event handlers, no foreign content, nothing fetched from
 * elsewhere.
 */
final class SvgCheck {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  private static final Set<String> ELEMENTS =
      Set.of(
          ("svg g defs title desc symbol use path rect circle ellipse line polyline polygon text tspan"
                  + " textPath linearGradient radialGradient stop clipPath mask pattern marker style")
              .split(" "));

  private static final Set<String> ATTRIBUTES =
      Set.of(
          ("alignment-baseline baseProfile baseline-shift class clip-path clip-rule clipPathUnits"
                  + " color cx cy d display dominant-baseline dx dy fill fill-opacity fill-rule"
                  + " font-family font-size font-style font-variant font-weight fr fx fy"
                  + " gradientTransform gradientUnits height href id lengthAdjust letter-spacing"
                  + " marker-end marker-mid marker-start markerHeight markerUnits markerWidth mask"
                  + " maskContentUnits maskUnits offset opacity orient overflow paint-order pathLength"
                  + " patternContentUnits patternTransform patternUnits points preserveAspectRatio r"
                  + " refX refY role rotate rx ry shape-rendering spreadMethod startOffset stop-color"
                  + " stop-opacity stroke stroke-dasharray stroke-dashoffset stroke-linecap"
                  + " stroke-linejoin stroke-miterlimit stroke-opacity stroke-width style"
                  + " text-anchor text-decoration text-rendering textLength transform type"
                  + " vector-effect version viewBox visibility width word-spacing x x1 x2 y y1 y2")
              .split(" "));

  private static final Pattern ARIA = Pattern.compile("aria-[a-z]+");

  /** What fetches, hides or computes in style text; {@code url(#here)} is all that is left. */
  private static final Pattern REACHING_OUT =
      Pattern.compile("url\\(\\s*(?!['\"]?#)|@|\\\\|expression|javascript:|data:");

  private static final XMLInputFactory FACTORY = factory();

  private boolean inStyle;

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    return factory;
  }

  void check(byte[] bytes) throws NotTaken {
    try {
      XMLStreamReader reader = FACTORY.createXMLStreamReader(new ByteArrayInputStream(bytes));
      boolean root = true;
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.START_ELEMENT && root) {
          checkRoot(reader);
          root = false;
        }
        checkEvent(event, reader);
      }
    } catch (XMLStreamException e) {
      throw new NotTaken("broken-picture", PictureType.SVG, String.valueOf(e.getMessage()));
    }
  }

  private static void checkRoot(XMLStreamReader reader) throws NotTaken {
    if (!SVG.equals(reader.getNamespaceURI()) || !"svg".equals(reader.getLocalName())) {
      throw new NotTaken("not-a-picture");
    }
  }

  private void checkEvent(int event, XMLStreamReader reader) throws NotTaken {
    switch (event) {
      case XMLStreamConstants.START_ELEMENT -> checkElement(reader);
      case XMLStreamConstants.END_ELEMENT -> inStyle = false;
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
        if (inStyle && reachesOut(reader.getText())) {
          throw forbidden(reader, "<style>");
        }
      }
      case XMLStreamConstants.DTD -> throw forbidden(reader, "<!DOCTYPE>");
      case XMLStreamConstants.ENTITY_REFERENCE, XMLStreamConstants.PROCESSING_INSTRUCTION ->
          throw forbidden(reader, reader.hasName() ? reader.getLocalName() : "<?…?>");
      default -> {
        // Comments and blanks draw nothing and do nothing.
      }
    }
  }

  private void checkElement(XMLStreamReader reader) throws NotTaken {
    String name = reader.getLocalName();
    if (!SVG.equals(reader.getNamespaceURI()) || !ELEMENTS.contains(name)) {
      throw forbidden(reader, "<" + name + ">");
    }
    inStyle = name.equals("style");
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (!isHarmless(reader, i)) {
        throw forbidden(reader, reader.getAttributeLocalName(i));
      }
    }
  }

  private static boolean isHarmless(XMLStreamReader reader, int i) {
    String namespace = reader.getAttributeNamespace(i);
    String name = reader.getAttributeLocalName(i);
    String value = reader.getAttributeValue(i);
    if (name.equals("href")) {
      return (isNone(namespace) || namespace.equals(XLINK)) && value.startsWith("#");
    }
    if (!isNone(namespace)) {
      return namespace.equals(XMLConstants.XML_NS_URI) && !name.equals("base");
    }
    return (ATTRIBUTES.contains(name) || ARIA.matcher(name).matches()) && !reachesOut(value);
  }

  private static boolean isNone(@Nullable String namespace) {
    return namespace == null || namespace.isEmpty();
  }

  private static boolean reachesOut(String style) {
    return REACHING_OUT.matcher(style.toLowerCase(Locale.ROOT)).find();
  }

  private static NotTaken forbidden(XMLStreamReader reader, String what) {
    return new NotTaken("unsafe-drawing", what, reader.getLocation().getLineNumber());
  }
}
