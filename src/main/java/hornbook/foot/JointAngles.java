package hornbook.foot;

/** Changes of angle at the three joints of the digit, deg; flexion above 0. */
public record JointAngles(double coffin, double pastern, double fetlock) {

  /** Under a wedge of so many degrees, when these are the changes for one degree (crevier-2001). */
  public JointAngles under(double wedgeAngle) {
    return new JointAngles(coffin * wedgeAngle, pastern * wedgeAngle, fetlock * wedgeAngle);
  }
}
