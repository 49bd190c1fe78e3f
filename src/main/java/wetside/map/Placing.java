package wetside.map;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.elk.alg.layered.options.CrossingMinimizationStrategy;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.math.KVectorChain;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.NodeLabelPlacement;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Places boxes and leads lines between their ports: layer by layer from left to right, lines at right angles, in the
 * order of the file where nothing else decides. The one class that knows the layout library, so that commands which draw
 * nothing never load it.
 */
final class Placing {
    private static final double PADDING = 12;

    static {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
    }

    private Placing() {}

    /** @param label size of what is written above (or below) the box; zero for nothing */
    record Box(String id, double width, double height, Map<String, double[]> ports, double[] label, boolean below) {}

    record Link(String fromBox, String fromPort, String toBox, String toPort) {}

    /** Corners of a line, and where lines of one port part. */
    record Route(List<double[]> points, List<double[]> junctions) {}

    /** @param boxes upper left corners by id; labels likewise; routes in the order of the links */
    record Placed(
            double width,
            double height,
            Map<String, double[]> boxes,
            Map<String, double[]> labels,
            List<Route> routes) {}

    /** What hangs together is laid out alone; the pieces stand in rows, in the order of their first part. */
    static Placed of(List<Box> boxes, List<Link> links) {
        List<Set<String>> groups = groups(boxes, links);
        List<Placed> pieces = groups.stream()
                .map(g -> together(
                        boxes.stream().filter(b -> g.contains(b.id())).toList(),
                        links.stream().filter(l -> g.contains(l.fromBox())).toList()))
                .toList();
        Rows rows = new Rows(pieces.stream().mapToDouble(Placed::width).max().orElse(0));
        Map<String, double[]> at = new LinkedHashMap<>();
        Map<String, double[]> labels = new LinkedHashMap<>();
        Route[] routes = new Route[links.size()];
        for (int i = 0; i < pieces.size(); i++) {
            double[] by = rows.next(pieces.get(i));
            pieces.get(i).boxes().forEach((id, p) -> at.put(id, moved(p, by)));
            pieces.get(i).labels().forEach((id, p) -> labels.put(id, moved(p, by)));
            int route = 0;
            for (int l = 0; l < links.size(); l++) {
                if (groups.get(i).contains(links.get(l).fromBox())) {
                    Route r = pieces.get(i).routes().get(route++);
                    routes[l] = new Route(moved(r.points(), by), moved(r.junctions(), by));
                }
            }
        }
        return new Placed(rows.width, rows.bottom, at, labels, List.of(routes));
    }

    private static double[] moved(double[] p, double[] by) {
        return new double[] {p[0] + by[0], p[1] + by[1]};
    }

    private static List<double[]> moved(List<double[]> all, double[] by) {
        return all.stream().map(p -> moved(p, by)).toList();
    }

    private static List<Set<String>> groups(List<Box> boxes, List<Link> links) {
        List<Set<String>> groups = new ArrayList<>();
        boxes.forEach(b -> groups.add(new LinkedHashSet<>(Set.of(b.id()))));
        for (Link l : links) {
            Set<String> from = holding(groups, l.fromBox());
            Set<String> to = holding(groups, l.toBox());
            if (from != to) {
                Set<String> first = groups.indexOf(from) < groups.indexOf(to) ? from : to;
                Set<String> second = first == from ? to : from;
                groups.remove(second);
                first.addAll(second);
            }
        }
        return groups;
    }

    private static Set<String> holding(List<Set<String>> groups, String id) {
        return groups.stream().filter(g -> g.contains(id)).findFirst().orElseThrow();
    }

    /** Pieces side by side while they fit into the width of the widest, then in a new row. */
    private static final class Rows {
        private final double width;
        private double x;
        private double y;
        private double bottom;

        private Rows(double width) {
            this.width = width;
        }

        private double[] next(Placed piece) {
            if (x > 0 && x + piece.width() > width) {
                x = 0;
                y = bottom;
            }
            double[] at = {x, y};
            x += piece.width();
            bottom = Math.max(bottom, y + piece.height());
            return at;
        }
    }

    private static Placed together(List<Box> boxes, List<Link> links) {
        ElkNode root = ElkGraphUtil.createGraph();
        options(root);
        Map<String, ElkNode> nodes = new LinkedHashMap<>();
        Map<String, ElkPort> ports = new LinkedHashMap<>();
        boxes.forEach(b -> nodes.put(b.id(), node(root, b, ports)));
        List<ElkEdge> edges = links.stream()
                .map(l -> ElkGraphUtil.createSimpleEdge(
                        ports.get(l.fromBox() + "." + l.fromPort()), ports.get(l.toBox() + "." + l.toPort())))
                .toList();
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        Map<String, double[]> at = new LinkedHashMap<>();
        Map<String, double[]> labels = new LinkedHashMap<>();
        nodes.forEach((id, n) -> {
            at.put(id, new double[] {n.getX(), n.getY()});
            n.getLabels().forEach(l -> labels.put(id, new double[] {n.getX() + l.getX(), n.getY() + l.getY()}));
        });
        return new Placed(
                root.getWidth(),
                root.getHeight(),
                at,
                labels,
                edges.stream().map(Placing::route).toList());
    }

    private static void options(ElkNode root) {
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(CoreOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        root.setProperty(CoreOptions.PADDING, new ElkPadding(PADDING));
        root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.NODES_AND_EDGES);
        root.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.GREEDY_MODEL_ORDER);
        root.setProperty(LayeredOptions.CROSSING_MINIMIZATION_STRATEGY, CrossingMinimizationStrategy.LAYER_SWEEP);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 10.0);
        root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_CROSSING_COUNTER_NODE_INFLUENCE, 0.1);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 18.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 12.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 10.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 14.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 12.0);
        root.setProperty(LayeredOptions.THOROUGHNESS, 20);
        root.setProperty(CoreOptions.SPACING_LABEL_NODE, 4.0);
    }

    private static ElkNode node(ElkNode root, Box box, Map<String, ElkPort> ports) {
        ElkNode node = ElkGraphUtil.createNode(root);
        node.setDimensions(box.width(), box.height());
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        node.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        box.ports().forEach((name, p) -> {
            ElkPort port = ElkGraphUtil.createPort(node);
            port.setDimensions(0, 0);
            port.setLocation(p[0], p[1]);
            port.setProperty(CoreOptions.PORT_SIDE, side(box, p));
            ports.put(box.id() + "." + name, port);
        });
        if (box.label()[0] > 0) {
            ElkLabel label = ElkGraphUtil.createLabel("label", node);
            label.setDimensions(box.label()[0], box.label()[1]);
            node.setProperty(
                    CoreOptions.NODE_LABELS_PLACEMENT,
                    EnumSet.of(
                            NodeLabelPlacement.OUTSIDE,
                            box.below() ? NodeLabelPlacement.V_BOTTOM : NodeLabelPlacement.V_TOP,
                            NodeLabelPlacement.H_CENTER));
        }
        return node;
    }

    private static PortSide side(Box box, double[] p) {
        if (p[0] <= 0) {
            return PortSide.WEST;
        }
        if (p[0] >= box.width()) {
            return PortSide.EAST;
        }
        return p[1] <= 0 ? PortSide.NORTH : PortSide.SOUTH;
    }

    private static Route route(ElkEdge edge) {
        List<double[]> points = new ArrayList<>();
        for (ElkEdgeSection s : edge.getSections()) {
            points.add(new double[] {s.getStartX(), s.getStartY()});
            s.getBendPoints().forEach(b -> points.add(new double[] {b.getX(), b.getY()}));
            points.add(new double[] {s.getEndX(), s.getEndY()});
        }
        KVectorChain junctions = edge.getProperty(CoreOptions.JUNCTION_POINTS);
        List<double[]> at = new ArrayList<>();
        if (junctions != null) {
            for (KVector v : junctions) {
                at.add(new double[] {v.x, v.y});
            }
        }
        return new Route(points, at);
    }
}
