package hornbook.plan;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Kit;
import hornbook.assessment.Measures;
import hornbook.assessment.Stretch;
import java.util.List;

/** What was measured, as figures that know the field they stand in. */
final class Given {
  private final Assessment assessment;
  private final Foot foot;
  private final String path;

  Given(Assessment assessment, Foot foot, int index) {
    this.assessment = assessment;
    this.foot = foot;
    this.path = "feet[" + index + "].";
  }

  /** The path of a field of the foot in hand. */
  String path(String field) {
    return path + field;
  }

  Figure toeLength() {
    return mm("toe length", measures().toeLength(), "toeLength");
  }

  Figure heelLength() {
    return mm("heel length", measures().heelLength(), "heelLength");
  }

  Figure toeAngle() {
    return deg("toe angle", measures().toeAngle(), "toeAngle");
  }

  Figure pasternAngle() {
    return deg("pastern angle", measures().pasternAngle(), "pasternAngle");
  }

  Figure bearingLength() {
    return mm("bearing length", measures().bearingLength(), "bearingLength");
  }

  Figure width() {
    return mm("width", measures().width(), "width");
  }

  Figure toeToWidest() {
    return mm("toe to widest part", measures().toeToWidest(), "toeToWidest");
  }

  Figure toeToFrog() {
    return mm("toe to point of frog", measures().toeToFrog(), "toeToFrog");
  }

  Figure coronetGirth() {
    return mm("coronet girth", measures().coronetGirth(), "coronetGirth");
  }

  Figure airTemperature() {
    return Figure.measured(
        "air temperature", assessment.visit().airTemperature(), "C", "visit.airTemperature");
  }

  Figure shoeThickness() {
    return kit("shoe thickness", kit().shoe().thickness(), "kit.shoe.thickness");
  }

  Figure webWidth() {
    return kit("web width", kit().shoe().webWidth(), "kit.shoe.webWidth");
  }

  Figure tapeWidth() {
    return kit("tape width", kit().wrap().width(), "kit.wrap.width");
  }

  Figure rollLength() {
    return kit("roll length", kit().wrap().rollLength(), "kit.wrap.rollLength");
  }

  Figure layerThickness() {
    return kit("thickness of a layer", kit().wrap().layerThickness(), "kit.wrap.layerThickness");
  }

  /** Height, thickness or flare of a stretch as the map has it. */
  Figure height(Stretch stretch) {
    return stretch("height of the defect", stretch, stretch.height(), "height");
  }

  Figure thickness(Stretch stretch) {
    return stretch("wall thickness", stretch, stretch.thickness(), "thickness");
  }

  Figure flare(Stretch stretch) {
    return stretch("flare", stretch, stretch.flare(), "flare");
  }

  private Figure stretch(String label, Stretch stretch, Double value, String field) {
    List<Stretch> wall = foot.wall();
    return Figure.measured(
        label, value, "mm", path + "wall[" + wall.indexOf(stretch) + "]." + field);
  }

  private Measures measures() {
    return foot.measures();
  }

  private Kit kit() {
    return assessment.kit();
  }

  private Figure mm(String label, Double value, String field) {
    return Figure.measured(label, value, "mm", path + "measures." + field);
  }

  private Figure deg(String label, Double value, String field) {
    return Figure.measured(label, value, "deg", path + "measures." + field);
  }

  private static Figure kit(String label, Double value, String field) {
    return Figure.measured(label, value, "mm", field);
  }
}
