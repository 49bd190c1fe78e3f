package wetside.drawing.symbol;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Finds the symbol of a kind: {@code NAME.svg}, or {@code NAME.wired.svg} where only its wires are drawn. A port is a
 * circle of class {@code port} whose id is the port's name. Classes thin, thick, dash and solid choose the stroke.
 */
public final class Symbols {
    private static final Map<String, Optional<Symbol>> READ = new ConcurrentHashMap<>();
    private static final List<String> GEOMETRY =
            List.of("d", "x", "y", "width", "height", "rx", "cx", "cy", "r", "font-size", "font-weight", "text-anchor");

    private Symbols() {}

    /** The symbol of a kind; empty when nobody has drawn one. */
    public static Optional<Symbol> of(String kind) {
        return READ.computeIfAbsent(kind, Symbols::read);
    }

    /** The symbol for drawings of wires, which is the usual one where no other is drawn. */
    public static Optional<Symbol> wired(String kind) {
        Optional<Symbol> own = of(kind + ".wired");
        return own.isPresent() ? own : of(kind);
    }

    private static Optional<Symbol> read(String name) {
        try (InputStream in = Symbols.class.getResourceAsStream("/wetside/drawing/symbol/" + name + ".svg")) {
            if (in == null) {
                return Optional.empty();
            }
            Element root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(in)
                    .getDocumentElement();
            return Optional.of(symbol(name, root));
        } catch (IOException | ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("symbol " + name, e);
        }
    }

    private static Symbol symbol(String name, Element root) {
        String[] box = root.getAttribute("viewBox").split(" ");
        List<Symbol.Shape> shapes = new ArrayList<>();
        Map<String, Symbol.Spot> ports = new LinkedHashMap<>();
        NodeList all = root.getChildNodes();
        for (int i = 0; i < all.getLength(); i++) {
            if (all.item(i) instanceof Element e) {
                if (e.getAttribute("class").equals("port")) {
                    ports.put(e.getAttribute("id"), new Symbol.Spot(number(e, "cx"), number(e, "cy")));
                } else {
                    shapes.add(shape(e));
                }
            }
        }
        String form = root.getAttribute("class");
        return new Symbol(
                name.replace(".wired", ""),
                form.isEmpty() ? Symbol.Form.PART : Symbol.Form.valueOf(form.toUpperCase(Locale.ROOT)),
                Double.parseDouble(box[2]),
                Double.parseDouble(box[3]),
                shapes,
                ports);
    }

    private static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    private static Symbol.Shape shape(Element e) {
        Map<String, String> geometry = new LinkedHashMap<>();
        NamedNodeMap given = e.getAttributes();
        for (String name : GEOMETRY) {
            Node value = given.getNamedItem(name);
            if (value != null) {
                geometry.put(name, value.getNodeValue());
            }
        }
        return new Symbol.Shape(e.getTagName(), weight(e.getAttribute("class")), geometry, e.getTextContent());
    }

    private static Symbol.Weight weight(String name) {
        return switch (name) {
            case "thin" -> Symbol.Weight.THIN;
            case "thick" -> Symbol.Weight.THICK;
            case "dash" -> Symbol.Weight.DASHED;
            case "solid" -> Symbol.Weight.SOLID;
            default -> Symbol.Weight.USUAL;
        };
    }
}
