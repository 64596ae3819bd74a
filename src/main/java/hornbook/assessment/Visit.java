package hornbook.assessment;

import java.time.LocalDate;
import java.util.List;

/** The visit. Air temperature in degrees Celsius; null is unknown. */
public record Visit(
    LocalDate date,
    Double airTemperature,
    Workplace workplace,
    Integer shodDaysAgo,
    VetRole vet,
    Handling handling,
    List<Request> askedFor) {}
