package quarterturn.craft.rod;

/**
 * Relief to expect, in millimetres.
 *
 * @param lowMm minus infinity where the string may still touch
 */
public record Range(double lowMm, double highMm) {}
