/**
 * Walks through a machine, told: where the water goes, the steam, what is let off, the current.
 *
 * <p>A walk follows the ways the kinds have written into the blueprint, so its order is that of the flow, and nobody
 * writes a tour by hand. {@link wetside.tour.WaterWalk} and {@link wetside.tour.CurrentWalk} find a tree of
 * {@link wetside.tour.Visit}s; {@link wetside.tour.Telling} puts it into sentences with the words of the kinds. Nothing
 * here knows what a reader does with a {@link wetside.tour.Tour}: {@link wetside.tour.TourSheet} makes a page of one.
 */
package wetside.tour;
