package hornbook.foot;

/**
 * How the horse's weight comes onto its feet.
 *
 * @param frontShare share of the weight on both fore feet, standing, in parts of one
 * @param trotFore peak vertical force on a fore foot at the trot, N for each kg of body weight
 * @param trotHind the same of a hind foot
 */
public record LoadRates(double frontShare, double trotFore, double trotHind) {}
