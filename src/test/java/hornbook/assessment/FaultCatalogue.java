package hornbook.assessment;

import java.util.List;
import java.util.stream.Stream;

/** One broken file of every kind of fault the check of fields can find. */
public final class FaultCatalogue {
  /**
   * @param text of the file
   * @param message how its only fault begins, behind the file's name
   * @param inSchema whether a JSON Schema can say it as well
   */
  public record Case(String text, String message, boolean inSchema) {}

  private FaultCatalogue() {}

  static Stream<Case> all() {
    return Stream.of(whole(), scalars(), lists(), groups(), contradictions()).flatMap(List::stream);
  }

  private static List<Case> whole() {
    String feet = "feet: [{limb: left-fore}]";
    String format = "format: hornbook-assessment/1\n";
    return List.of(
        schema(feet, ":1:1: format: found nothing; allowed: hornbook-assessment/1"),
        schema(
            "format: hornbook-assessment/2\n" + feet,
            ":1:9: format: found \"hornbook-assessment/2\"; allowed: hornbook-assessment/1;"
                + " nearest: hornbook-assessment/1"),
        schema("format: unknown\n" + feet, ":1:9: format: found \"unknown\"; allowed:"),
        schema(format, ":1:1: feet: found nothing; allowed: a list of 1 to 4 groups of: limb,"),
        schema(format + "feet: []", ":2:7: feet: found an empty list; allowed: a list of 1 to 4"),
        schema(format + "feet: unknown", ":2:7: feet: found \"unknown\"; allowed: a list of 1"),
        schema(format + "feet: none", ":2:7: feet: found \"none\"; allowed: a list of 1 to 4"),
        schema(format + "feet:", ":2:6: feet: found nothing; allowed: a list of 1 to 4"),
        schema(format + "feet: {limb: left-fore}", ":2:7: feet: found a group of fields; allowed:"),
        schema(
            format + "feet: [left-fore]", ":2:8: feet[0]: found \"left-fore\"; allowed: a group"),
        schema(format + "feet: [{}]", ":2:8: feet[0].limb: found nothing; allowed: left-fore,"),
        schema(
            format + "feet: [{limb: unknown}]",
            ":2:15: feet[0].limb: found \"unknown\"; allowed: left-fore, right-fore, left-hind,"
                + " right-hind"),
        schema(
            "assessment: {" + format.strip() + ", feet: [{limb: left}]}",
            ":1:59: feet[0].limb: found \"left\"; allowed: left-fore"),
        schema(
            "titel: x\nassessment: {" + format.strip() + ", " + feet + "}",
            ":1:1: titel: found the unknown field \"titel\"; allowed: title, story, level, topics,"),
        schema("assessment: unknown", ":1:13: found \"unknown\"; allowed: a group of fields"));
  }

  private static List<Case> scalars() {
    return List.of(
        schema(
            Read.foot("shoeing: nialed"),
            ":4:14: feet[0].shoeing: found \"nialed\"; allowed: unshod, nailed, glued, wrapped"
                + " or unknown; nearest: nailed"),
        schema(Read.foot("shoeing: Nailed"), ":4:14: feet[0].shoeing: found \"Nailed\"; allowed:"),
        schema(Read.foot("shoeing: 3"), ":4:14: feet[0].shoeing: found \"3\"; allowed: unshod,"),
        schema(Read.foot("shoeing: [nailed]"), ":4:14: feet[0].shoeing: found a list; allowed:"),
        schema(Read.foot("shoeing: {a: b}"), ":4:14: feet[0].shoeing: found a group of fields;"),
        schema(
            Read.foot("brushing: sometimes"),
            ":4:15: feet[0].brushing: found \"sometimes\"; allowed: true, false, yes, no or unknown"),
        schema(
            Read.foot("brushing: \"true\""), ":4:15: feet[0].brushing: found \"true\"; allowed:"),
        schema(Read.foot("brushing: 1"), ":4:15: feet[0].brushing: found \"1\"; allowed: true,"),
        schema(
            Read.foot("lameness: 6"),
            ":4:15: feet[0].lameness: found \"6\"; allowed: a whole number from 0 to 5"),
        schema(
            Read.foot("lameness: -1"), ":4:15: feet[0].lameness: found \"-1\"; allowed: a whole"),
        schema(Read.foot("lameness: 2.5"), ":4:15: feet[0].lameness: found \"2.5\"; allowed: a"),
        schema(Read.foot("lameness: \"2\""), ":4:15: feet[0].lameness: found \"2\"; allowed: a"),
        schema(Read.foot("lameness: two"), ":4:15: feet[0].lameness: found \"two\"; allowed: a"),
        schema(
            Read.foot("measures: {toeLength: 960}"),
            ":4:27: feet[0].measures.toeLength: found \"960\"; allowed: a length from 15 mm to 500"
                + " mm (mm, cm, m, in, ft)"),
        reader(
            Read.foot("measures: {toeLength: 38 in}"),
            ":4:27: feet[0].measures.toeLength: found \"38 in\" (965.2 mm); allowed: a length from"),
        schema(
            Read.foot("measures: {toeLength: 96 kg}"),
            ":4:27: feet[0].measures.toeLength: found \"96 kg\"; allowed: a length from 15 mm"),
        schema(
            Read.foot("measures: {toeAngle: 46 C}"),
            ":4:26: feet[0].measures.toeAngle: found \"46 C\"; allowed: an angle from 5 deg to 120"),
        schema(
            Read.foot("measures: {toeLength: long}"),
            ":4:27: feet[0].measures.toeLength: found \"long\"; allowed: a length"),
        schema(
            Read.foot("measures: {toeLength: true}"),
            ":4:27: feet[0].measures.toeLength: found \"true\"; allowed: a length"),
        schema(
            horse("name: \"a\\tb\""),
            ":2:15: horse.name: found \"a\\u0009b\"; allowed: a text of up to 200 letters on one"),
        schema(horse("name: \"\\u202eab\""), ":2:15: horse.name: found \"\\u202eab\"; allowed: a"),
        schema(horse("name: " + "x".repeat(201)), ":2:15: horse.name: found \"xxx"),
        schema(horse("name: [a]"), ":2:15: horse.name: found a list; allowed: a text"),
        schema(
            visit("date: 2026-02-30"),
            ":2:15: visit.date: found \"2026-02-30\"; allowed: a day of the calendar,"
                + " year-month-day, such as 2026-03-14"),
        schema(visit("date: 14.3.2026"), ":2:15: visit.date: found \"14.3.2026\"; allowed: a day"),
        schema(visit("date: 1026-03-14"), ":2:15: visit.date: found \"1026-03-14\"; allowed: a"),
        schema(visit("date: 20260314"), ":2:15: visit.date: found \"20260314\"; allowed: a day"));
  }

  private static List<Case> lists() {
    return List.of(
        schema(
            Read.foot("signs: {testerPain: [toes]}"),
            ":4:26: feet[0].signs.testerPain[0]: found \"toes\"; allowed: a list of toe, side,"
                + " quarter, heel, frog, sole, nail; [] or none when there is none; nearest: toe"),
        schema(
            Read.foot("signs: {testerPain: toes}"),
            ":4:25: feet[0].signs.testerPain: found \"toes\"; allowed: a list of toe,"),
        schema(
            Read.foot("signs: {testerPain: [toe, unknown]}"),
            ":4:31: feet[0].signs.testerPain[1]: found \"unknown\"; allowed: a list of toe,"),
        schema(
            Read.foot("signs: {testerPain: [toe, ~]}"),
            ":4:31: feet[0].signs.testerPain[1]: found nothing; allowed: a list of toe,"),
        schema(
            Read.foot("signs: {testerPain: [[toe]]}"),
            ":4:26: feet[0].signs.testerPain[0]: found a list; allowed: a list of toe,"),
        schema(
            Read.foot("signs: {testerPain: {toe: 1}}"),
            ":4:25: feet[0].signs.testerPain: found a group of fields; allowed: a list of toe,"),
        schema(
            Read.foot("cracks: toe"),
            ":4:13: feet[0].cracks: found \"toe\"; allowed: a list of up to 40 groups of: place,"),
        schema(Read.foot("wall: none"), ":4:11: feet[0].wall: found \"none\"; allowed: a list of"),
        schema(Read.foot("cracks: [toe]"), ":4:14: feet[0].cracks[0]: found \"toe\"; allowed: a"),
        schema(
            Read.foot("cracks: [" + "{place: toe}, ".repeat(41) + "]"),
            ":4:13: feet[0].cracks: found a list of 41; allowed: a list of up to 40 groups"));
  }

  private static List<Case> groups() {
    return List.of(
        schema(
            Read.foot("signs: {digitalPuls: normal}"),
            ":4:13: feet[0].signs.digitalPuls: found the unknown field \"digitalPuls\"; allowed:"
                + " digitalPulse, hoofHeat,"),
        schema(
            Read.foot("digitalPulse: normal"),
            ":4:5: feet[0].digitalPulse: found the unknown field \"digitalPulse\"; allowed: limb,"),
        schema(Read.foot("signs: normal"), ":4:12: feet[0].signs: found \"normal\"; allowed: a"),
        schema(Read.foot("signs: [hoofHeat]"), ":4:12: feet[0].signs: found a list; allowed: a"),
        schema(
            "{\"format\": \"hornbook-assessment/1\", \"feet\": [{\"limb\": \"left-fore\"}], \"x\": 1}",
            ":1:70: x: found the unknown field \"x\"; allowed: format, units, horse, visit, feet, kit"));
  }

  private static List<Case> contradictions() {
    return List.of(
        schema(
            "format: hornbook-assessment/1\nfeet: [{limb: left-fore}, {limb: left-fore}]",
            ":2:34: feet[1].limb: found a second left-fore; allowed: each foot once"),
        reader(
            horse("ageDays: 60, ageYears: 5"),
            ":2:18: horse.ageDays: found 60 days beside 5 years; allowed: one age, given once"),
        reader(
            Read.foot("measures: {toeToWidest: 140 mm, bearingLength: 130 mm}"),
            ":4:29: feet[0].measures.toeToWidest: found 140 mm; allowed: at most the bearing length,"
                + " 130 mm"),
        reader(
            Read.foot("wall: [{side: medial, from: 50, to: 40}]"),
            ":4:41: feet[0].wall[0].to: found 40 mm; allowed: more than where the stretch begins, 50"
                + " mm"),
        reader(
            Read.foot("wall: [{side: medial, from: 0, to: 60}, {side: medial, from: 59, to: 90}]"),
            ":4:66: feet[0].wall[1].from: found 59 mm, inside feet[0].wall[0]; allowed: 60 mm or"),
        reader(
            Read.foot(
                "measures: {bearingLength: 100, width: 100}", "wall: [{side: medial, to: 221}]"),
            ":5:31: feet[0].wall[0].to: found 221 mm; allowed: at most 220 mm for a foot of this"));
  }

  private static String horse(String fields) {
    return Read.foot().replace("feet:", "horse: {" + fields + "}\nfeet:").replace("\n    \n", "\n");
  }

  private static String visit(String fields) {
    return horse(fields).replace("horse:", "visit:");
  }

  private static Case schema(String text, String message) {
    return new Case(text, message, true);
  }

  private static Case reader(String text, String message) {
    return new Case(text, message, false);
  }
}
