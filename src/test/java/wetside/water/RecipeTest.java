package wetside.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RecipeTest {
    private static final Recipe.Limits WIDE = new Recipe.Limits(1, 1, 1, 1, List.of(Salt.values()));

    @Test
    void whatCanBeReachedIsReached() {
        SplittableRandom r = new SplittableRandom(1);
        for (int i = 0; i < 60; i++) {
            Recipe.Target t = new Recipe.Target(r.nextDouble(0, 1e-3), r.nextDouble(0, 1e-3), r.nextDouble(0, 2e-3));
            Recipe recipe = Recipe.nearest(Composition.PURE, t, WIDE);
            assertThat(recipe.off(t)).isLessThan(1e-5);
            assertThat(recipe.added().values()).allMatch(mol -> mol > 0);
            assertThat(recipe.water().cations() - recipe.water().anions()).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void limitsHoldAndAreNamed() {
        Recipe.Target t = new Recipe.Target(1.5e-3, 0.5e-3, 2.5e-3);
        Recipe recipe = Recipe.nearest(Composition.PURE, t, Recipe.Limits.USUAL);
        assertThat(recipe.water().chloride()).isLessThan(Recipe.Limits.USUAL.chloride() * 1.001);
        assertThat(recipe.water().sulfate()).isLessThan(Recipe.Limits.USUAL.sulfate() * 1.001);
        assertThat(recipe.water().sodium()).isLessThan(Recipe.Limits.USUAL.sodium() * 1.001);
        assertThat(recipe.off(t)).isGreaterThan(1e-4);
        assertThat(recipe.binding()).contains("the limit of chloride", "the limit of sulfate");
    }

    /** Salts thrown in at random within the limits never come nearer. */
    @Test
    void nothingWithinTheLimitsIsNearer() {
        SplittableRandom r = new SplittableRandom(2);
        Recipe.Limits l = Recipe.Limits.USUAL;
        for (int i = 0; i < 20; i++) {
            Recipe.Target t = new Recipe.Target(r.nextDouble(0, 2e-3), r.nextDouble(0, 2e-3), r.nextDouble(0, 3e-3));
            double best = Recipe.nearest(Composition.PURE, t, l).off(t);
            for (int k = 0; k < 3000; k++) {
                Composition c = Composition.PURE;
                for (Salt s : Salt.values()) {
                    c = c.plus(s.dissolved(r.nextDouble() < 0.4 ? 0 : r.nextDouble(0, 1.2e-3)));
                }
                boolean allowed = c.sodium() <= l.sodium()
                        && c.potassium() <= l.potassium()
                        && c.chloride() <= l.chloride()
                        && c.sulfate() <= l.sulfate();
                if (allowed) {
                    double off = Math.hypot(
                            Math.hypot(c.calcium() - t.calcium(), c.magnesium() - t.magnesium()),
                            c.alkalinity() - t.alkalinity());
                    assertThat(off).isGreaterThan(best - 1.5e-5);
                }
            }
        }
    }

    @Test
    void whatIsThereAlreadyIsNotTakenOut() {
        Composition hard = new Composition(2e-3, 1e-3, 0, 0, 0, 0, 0, 0, 6e-3, 6.3e-3);
        Recipe recipe = Recipe.nearest(hard, new Recipe.Target(5e-4, 0, 8e-4), Recipe.Limits.USUAL);
        assertThat(recipe.added()).isEmpty();
        assertThat(recipe.water()).isEqualTo(hard);
    }
}
