package hornbook.assessment;

/** What was measured on one foot: lengths in mm, angles in degrees; null is unknown. */
public record Measures(
    Double toeLength,
    Double heelLength,
    Double toeAngle,
    Double heelAngle,
    Double pasternAngle,
    Double bearingLength,
    Double width,
    Double toeToWidest,
    Double toeToFrog,
    Double frogLength,
    Double frogWidth,
    Double medialHeelHeight,
    Double lateralHeelHeight,
    Double coronetGirth,
    Double nailExitHeight,
    Double soleDepth,
    Double palmarAngle,
    Double toTrim) {}
