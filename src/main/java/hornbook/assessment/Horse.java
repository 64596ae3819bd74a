package hornbook.assessment;

/** The horse. Weight in kg, lengths in mm, temperature in degrees Celsius; null is unknown. */
public record Horse(
    String name,
    Integer ageYears,
    Integer ageDays,
    Double weight,
    Double girth,
    Double bodyLength,
    Work work,
    TetanusCover tetanusCover,
    Double bodyTemperature,
    Integer bodyCondition,
    Integer laminitisGrade,
    Boolean unwillingToMove,
    Boolean shiftsWeight,
    Boolean colicSigns,
    Boolean unwell,
    Species species,
    Integer worksInDays) {}
