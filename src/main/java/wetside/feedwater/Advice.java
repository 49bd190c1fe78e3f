package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.analysis.BrewingRange;
import wetside.analysis.Heated;
import wetside.analysis.Ranged;
import wetside.analysis.Use;
import wetside.analysis.WaterSheet;
import wetside.analysis.Waters;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;
import wetside.water.TradeIndex;

/**
 * Everything about one water: alone, or in a machine.
 *
 * @param conductivity at 25 °C [S/m]: measured where it was, else from the ions
 * @param heated       in the order of the machine's hot places
 * @param boiler       of the vessel steam is drawn from
 */
public record Advice(
        Waters waters,
        MachineFacts machine,
        ConstantSet set,
        Ranged conductivity,
        List<Heated> heated,
        Optional<Concentration> boiler,
        List<Forecast> forecasts,
        List<Verdict> verdicts) {
    private static final double ROOM = 298.15;

    /** Of a sheet's water as it comes. */
    public static Advice of(WaterSheet sheet, MachineFacts machine, ConstantSet set) {
        return of(sheet.waters(), sheet.conductivity(), sheet.range(), sheet.use(), machine, set);
    }

    /** Of a water after treatment. */
    public static Advice treated(Waters waters, BrewingRange range, Use use, MachineFacts machine, ConstantSet set) {
        return of(waters, waters.of(Conductivity::atRoom), range, use, machine, set);
    }

    private static Advice of(
            Waters waters, Ranged conductivity, BrewingRange range, Use use, MachineFacts machine, ConstantSet set) {
        Optional<Concentration> boiler =
                machine.boiler().map(h -> Concentration.of(waters, h, use, machine.brewsFromBoiler(), set));
        List<Heated> heated = machine.hot().stream()
                .map(h -> Heated.of(waters, set, h.kelvin()))
                .toList();
        List<Forecast> forecasts = new ArrayList<>();
        Verdicts verdicts = new Verdicts(waters, range, set, boiler).taste();
        if (machine.installed().isPresent()) {
            machine.hot().forEach(h -> gather(forecasts, forecast(waters, h, use, machine, boiler, set)));
        }
        for (int i = 0; i < heated.size(); i++) {
            Hot h = machine.hot().get(i);
            Optional<Forecast> there = forecasts.stream()
                    .filter(f -> f.place().id().equals(h.id()))
                    .findFirst();
            verdicts.scale(heated.get(i), there, h);
        }
        Heated hottest = heated.stream()
                .reduce((a, b) -> a.kelvin() > b.kelvin() ? a : b)
                .orElseThrow();
        verdicts.sulfate(hottest)
                .boiler()
                .probe(machine.blindness(), conductivity)
                .chloride()
                .copper(Equilibrium.at(set, ROOM));
        return new Advice(waters, machine, set, conductivity, heated, boiler, forecasts, verdicts.all());
    }

    private static Forecast forecast(
            Waters waters, Hot h, Use use, MachineFacts machine, Optional<Concentration> boiler, ConstantSet set) {
        if (h.steams() && h.isVessel() && boiler.isPresent()) {
            boolean brews = machine.hot().stream().allMatch(Hot::steams);
            return Forecast.steaming(waters, h, use, boiler.get(), brews, set);
        }
        if (h.steams()) {
            return Forecast.flashing(waters, h, use);
        }
        long places = machine.hot().stream().filter(other -> !other.steams()).count();
        return Forecast.brewing(waters, h, use, 1.0 / places, machine.jet(), set);
    }

    /** What falls in one vessel falls on one element. */
    private static void gather(List<Forecast> forecasts, Forecast more) {
        for (int i = 0; i < forecasts.size(); i++) {
            if (forecasts.get(i).place().id().equals(more.place().id())) {
                forecasts.set(i, forecasts.get(i).with(more));
                return;
            }
        }
        forecasts.add(more);
    }

    /**
     * Langelier and Ryznar as the trade quotes them: simplified, from the pH of the cold water.
     *
     * @return Langelier, Ryznar
     */
    public Ranged[] trade(double kelvin) {
        Equilibrium room = Equilibrium.at(set, ROOM);
        return new Ranged[] {
            waters.of(c -> TradeIndex.langelier(room.of(c).ph(), saturation(c, kelvin))),
            waters.of(c -> TradeIndex.ryznar(room.of(c).ph(), saturation(c, kelvin)))
        };
    }

    private static double saturation(Composition c, double kelvin) {
        return TradeIndex.saturationPh(
                Math.max(1, Concentration.solids(c)),
                Math.max(0.1, c.calcium() * 100.0869e3),
                Math.max(0.1, c.alkalinity() * 50.0435e3),
                kelvin);
    }

    /** The worst of the verdicts. */
    public Verdict.Grade worst() {
        return verdicts.stream().map(Verdict::grade).max(Enum::compareTo).orElse(Verdict.Grade.GOOD);
    }
}
