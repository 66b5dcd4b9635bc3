package org.tidewright.web.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back with the JDK's XML parser. */
public final class Xml {
    private Xml() {}

    /** Parses, and fails for what is not well formed. */
    public static Document parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (Exception notWellFormed) {
            throw new AssertionError("not well formed: " + notWellFormed.getMessage() + "\n" + svg, notWellFormed);
        }
    }

    /** Every element of a name whose attribute has a value; "*" for any name. */
    public static List<Element> with(Document document, String element, String attribute, String value) {
        NodeList all = document.getElementsByTagName(element);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element one = (Element) all.item(i);
            if (one.getAttribute(attribute).equals(value)) {
                found.add(one);
            }
        }
        return found;
    }

    /** A rectangle's area with y up, as the layout has it. */
    static Area area(Element rectangle) {
        double x = Double.parseDouble(rectangle.getAttribute("x"));
        double y = Double.parseDouble(rectangle.getAttribute("y"));
        double width = Double.parseDouble(rectangle.getAttribute("width"));
        double height = Double.parseDouble(rectangle.getAttribute("height"));
        return new Area(x, -y - height, width, height);
    }
}
