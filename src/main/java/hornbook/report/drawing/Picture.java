package hornbook.report.drawing;

/** The drawings there are of a foot. */
public enum Picture {
  GROUND("THE GROUND EDGE"),
  SIDE("FROM THE SIDE"),
  WALL("THE WALL UNROLLED"),
  GROWTH("WHEN IT HAS GROWN OUT");

  private final String heading;

  Picture(String heading) {
    this.heading = heading;
  }

  public String heading() {
    return heading;
  }
}
