package quarterturn.craft.rod;

/**
 * A range of expected relief, in millimetres.
 *
 * @param lowMm minus infinity where the string may still touch
 */
public record Range(double lowMm, double highMm) {}
