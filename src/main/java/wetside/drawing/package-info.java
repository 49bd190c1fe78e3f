/**
 * Pictures as SVG text, drawn from runs and machines and nothing else: strip charts so far.
 *
 * <p>Colours, type and weights are those of the design's light theme. Start at {@link wetside.drawing.StripChart}.
 */
package wetside.drawing;
