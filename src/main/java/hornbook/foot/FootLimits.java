package hornbook.foot;

import hornbook.foot.shape.OutlineShape;
import hornbook.foot.wall.NailingLimits;

/**
 * Every limit of the trade that the readings of a foot need, filled from the rule base for the limb
 * and age in hand.
 *
 * @param shape what the ground outline assumes
 * @param edgeSlack how near to the outlined heel a map has to come to be taken to reach it, as a
 *     share of the edge
 * @param nailing what a nail asks of the wall
 * @param nailExitHeight usual height at which nails leave the wall, mm above the shoe
 * @param growth growth of horn
 * @param usualToe usual toe length by body weight
 * @param grownDays age in days from which a horse counts as grown
 * @param trim what an ordinary trim takes off the wall
 * @param tallLoss the height above which a loss takes support and not only an edge, mm
 * @param birthHoofDays age in days up to which a foal still stands on the hoof it was born with
 * @param judgedDays days for which what a vet has judged holds
 * @param smallAnimal weight up to which an animal may be a pony or a donkey, kg
 * @param ownGrowthDays fewest days over which the growth of a foot is measured well enough
 */
public record FootLimits(
    OutlineShape shape,
    double edgeSlack,
    NailingLimits nailing,
    double nailExitHeight,
    GrowthRates growth,
    UsualToeLength usualToe,
    double grownDays,
    TrimLimits trim,
    double tallLoss,
    double birthHoofDays,
    double judgedDays,
    double smallAnimal,
    double ownGrowthDays) {}
