package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Air;
import wetside.physics.Convection;

class HeatPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Heat lost to the room");

    @Test
    void aNusseltNumber() {
        published.check(
                "Nu at Gr 2.63e9, Pr 0.69",
                "Incropera, Heat Transfer, 6th ed., example 9.2, as worked by the Python package ht",
                139.13493970073597,
                Convection.horizontalCylinder(2.63e9 * 0.69, 0.69),
                Tolerance.relative(1e-9),
                "the same formula");
    }

    @Test
    void bSteamPipe() {
        String source = "Incropera, Heat Transfer, 6th ed., example 9.4 (from memory)";
        String reason = "three printed digits carried through the example";
        double ra = 9.8 * 0.002725 * (165 - 23) * 1e-3 / (22.8e-6 * 32.8e-6);
        published.check("Ra of a 0.1 m pipe at 165 °C in 23 °C", source, 5.073e6, ra, Tolerance.relative(2e-3), reason);
        double nu = Convection.horizontalCylinder(5.073e6, 0.697);
        published.check("Nu", source, 23.3, nu, Tolerance.relative(0.01), reason);
        double convected = nu * 0.0313 / 0.1 * Math.PI * 0.1 * (165 - 23);
        published.check("convected [W/m]", source, 325, convected, Tolerance.relative(0.011), reason);
        double radiated = Convection.radiation(0.85, Math.PI * 0.1, 165 + 273.15, 23 + 273.15);
        published.check("radiated [W/m]", source, 441, radiated, Tolerance.relative(2e-3), reason);
        double h = Convection.horizontalCylinder(0.1, 165 + 273.15, 23 + 273.15, 101325);
        published.check(
                "heat transfer coefficient with this program's air [W/(m² K)]",
                source,
                7.29,
                h,
                Tolerance.relative(0.02),
                "properties of air by short formulas");
    }

    @Test
    void cAnotherCorrelation() {
        double h = Convection.horizontalCylinder(0.1, 170 + 273.15, 30 + 273.15, 101325);
        published.check(
                "coefficient of a 0.1 m pipe at 170 °C in 30 °C [W/(m² K)]",
                "lecture example by McAdams's form, Nu = 0.53 Ra^¼",
                8.07,
                h,
                Tolerance.relative(0.13),
                "the two correlations differ by about a tenth here");
    }

    @Test
    void dAir() {
        String source = "Incropera, Heat Transfer, 6th ed., table A.4 (from memory)";
        double film = 367;
        double rho = 1e5 / (Air.GAS_CONSTANT * film);
        published.check(
                "λ of air at 367 K [W/(m K)]",
                source,
                0.0313,
                Air.conductivity(film),
                Tolerance.relative(0.02),
                "Sutherland's law");
        published.check(
                "ν of air at 367 K [1e-6 m²/s]",
                source,
                22.8,
                Air.viscosity(film) / rho * 1e6,
                Tolerance.relative(0.02),
                "Sutherland's law; the table's density is that of 1 bar");
    }
}
