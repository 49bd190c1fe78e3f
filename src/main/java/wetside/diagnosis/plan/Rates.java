package wetside.diagnosis.plan;

import java.util.Map;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;

/**
 * What time, access, risk and giving up cost.
 *
 * @param perMinute money per minute of the person
 * @param panelMinutes minutes to take a panel off and put it back, by panel
 * @param otherPanel the same for panels not named
 * @param risk money set against each hazard; hazards not named cost nothing
 * @param callIn what handing the job to somebody better placed costs, their repair included, when the cause is known
 */
public record Rates(
        double perMinute,
        Map<String, Double> panelMinutes,
        double otherPanel,
        Map<Hazard, Double> risk,
        double callIn) {

    public Rates {
        panelMinutes = Map.copyOf(panelMinutes);
        risk = Map.copyOf(risk);
    }

    /** A workshop that charges one a minute, ten minutes a panel, and pays to stay out of danger. */
    public static final Rates USUAL =
            new Rates(1, Map.of(), 10, Map.of(Hazard.CARE, 1.0, Hazard.INSIDE, 3.0, Hazard.LIVE, 10.0), 600);

    public Rates callIn(double other) {
        return new Rates(perMinute, panelMinutes, otherPanel, risk, other);
    }

    /** Cost of an effort without its panels. */
    public double of(Effort effort) {
        return effort.minutes() * perMinute + effort.money() + risk.getOrDefault(effort.hazard(), 0.0);
    }

    /** Cost of getting a panel off and on again. */
    public double panel(String panel) {
        return perMinute * panelMinutes(panel);
    }

    public double panelMinutes(String panel) {
        return panelMinutes.getOrDefault(panel, otherPanel);
    }
}
