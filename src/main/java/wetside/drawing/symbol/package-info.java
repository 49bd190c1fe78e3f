/**
 * Graphic symbols of the kinds, one SVG file each in {@code wetside/drawing/symbol}, drawn by us after the grammar of
 * ISO 1219, ISO 14617 and IEC 60617, with the places of the kind's ports on it.
 *
 * <p>What a part of one machine looks like inside its case is the cabinet's business. Start at {@link
 * wetside.drawing.symbol.Symbols}.
 */
package wetside.drawing.symbol;
