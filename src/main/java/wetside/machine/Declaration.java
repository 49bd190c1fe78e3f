package wetside.machine;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a kind declares of itself: its name, ports, parameters and the traits the checks of a machine look at. Two
 * declarations are the same when they are the same object; a kind holds exactly one.
 */
public final class Declaration {
    private final String name;
    private final List<Port> ports;
    private final List<Parameter> parameters;
    /** The same, for looking one up hundreds of times for every plant made. */
    private final Parameter[] inOrder;

    private final Set<Trait> traits;

    public Declaration(String name, List<Port> ports, List<Parameter> parameters, Trait... traits) {
        this.name = name;
        this.ports = List.copyOf(ports);
        this.parameters = List.copyOf(parameters);
        inOrder = parameters.toArray(Parameter[]::new);
        this.traits = Set.of(traits);
    }

    /** The kind's name as written in machine files, e.g. {@code check valve}. */
    public String name() {
        return name;
    }

    public List<Port> ports() {
        return ports;
    }

    public List<Parameter> parameters() {
        return parameters;
    }

    public boolean is(Trait trait) {
        return traits.contains(trait);
    }

    public Optional<Port> port(String portName) {
        for (Port p : ports) {
            if (p.name().equals(portName)) {
                return Optional.of(p);
            }
        }
        return Optional.empty();
    }

    public Optional<Parameter> parameter(String parameterName) {
        return parameters.stream().filter(p -> p.name().equals(parameterName)).findFirst();
    }

    /** Position of a parameter in this declaration; parameters are compared by identity. */
    public int indexOf(Parameter parameter) {
        for (int i = 0; i < inOrder.length; i++) {
            if (inOrder[i] == parameter) {
                return i;
            }
        }
        throw new IllegalStateException("kind '" + name + "' has no parameter '" + parameter.name() + "'");
    }
}
