package hornbook.foot.shape;

/**
 * Material added to a foot, all in mm; a negative number is horn taken away.
 *
 * @param toeDepth what the toe gains in length, along the wall
 * @param heelDepth what the heel gains in length, along the wall
 * @param front thickness laid on the front of the toe, square to the wall
 * @param sides thickness laid on each side at the widest part
 * @param behind what the bearing is carried back beyond the heel buttress, along the ground
 * @param setBack how far behind the foremost point the toe is rolled or the shoe set back
 */
public record AddedMaterial(
    double toeDepth, double heelDepth, double front, double sides, double behind, double setBack) {
  public static final AddedMaterial NOTHING = new AddedMaterial(0, 0, 0, 0, 0, 0);

  /** Depth along the wall, the same or not at toe and heel. */
  public static AddedMaterial depth(double toe, double heel) {
    return new AddedMaterial(toe, heel, 0, 0, 0, 0);
  }

  public AddedMaterial withFront(double thickness) {
    return new AddedMaterial(toeDepth, heelDepth, thickness, sides, behind, setBack);
  }

  public AddedMaterial withSides(double thickness) {
    return new AddedMaterial(toeDepth, heelDepth, front, thickness, behind, setBack);
  }

  public AddedMaterial withBehind(double length) {
    return new AddedMaterial(toeDepth, heelDepth, front, sides, length, setBack);
  }

  public AddedMaterial withSetBack(double length) {
    return new AddedMaterial(toeDepth, heelDepth, front, sides, behind, length);
  }
}
