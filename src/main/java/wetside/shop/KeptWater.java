package wetside.shop;

/**
 * A water as it was measured for a machine.
 *
 * @param sheet   the water sheet, as a text
 * @param entered the form as it was filled in, so that it can be gone on with
 */
public record KeptWater(long id, long machineId, String sheet, String entered, String who, String at) {}
