package hornbook.plan.sheet;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Kit;
import hornbook.assessment.Measures;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.Fields;
import hornbook.plan.figure.Figure;
import java.util.List;

/** What was measured, as figures that know the field they stand in. */
public final class MeasuredFigures {
  private final Assessment assessment;
  private final Foot foot;
  private final String path;

  MeasuredFigures(Assessment assessment, Foot foot, int index) {
    this.assessment = assessment;
    this.foot = foot;
    this.path = "feet[" + index + "].";
  }

  /** The path of a field of the foot in hand. */
  public String path(String field) {
    return path + field;
  }

  public Figure toeLength() {
    return mm(measures().toeLength(), "toeLength");
  }

  public Figure heelLength() {
    return mm(measures().heelLength(), "heelLength");
  }

  public Figure toeAngle() {
    return deg(measures().toeAngle(), "toeAngle");
  }

  public Figure pasternAngle() {
    return deg(measures().pasternAngle(), "pasternAngle");
  }

  public Figure bearingLength() {
    return mm(measures().bearingLength(), "bearingLength");
  }

  public Figure width() {
    return mm(measures().width(), "width");
  }

  public Figure toeToWidest() {
    return mm(measures().toeToWidest(), "toeToWidest");
  }

  public Figure toeToFrog() {
    return mm(measures().toeToFrog(), "toeToFrog");
  }

  public Figure coronetGirth() {
    return mm(measures().coronetGirth(), "coronetGirth");
  }

  public Figure airTemperature() {
    return Figure.measured(
        "air temperature", assessment.visit().airTemperature(), "C", "visit.airTemperature");
  }

  public Figure shoeThickness() {
    return kit("shoe thickness", kit().shoe().thickness(), "kit.shoe.thickness");
  }

  public Figure webWidth() {
    return kit("web width", kit().shoe().webWidth(), "kit.shoe.webWidth");
  }

  public Figure tapeWidth() {
    return kit("tape width", kit().wrap().width(), "kit.wrap.width");
  }

  public Figure rollLength() {
    return kit("roll length", kit().wrap().rollLength(), "kit.wrap.rollLength");
  }

  public Figure layerThickness() {
    return kit("thickness of a layer", kit().wrap().layerThickness(), "kit.wrap.layerThickness");
  }

  /** Height, thickness or flare of a stretch as the map has it. */
  public Figure height(WallStretch stretch) {
    return stretch("height of the defect", stretch, stretch.height(), "height");
  }

  public Figure thickness(WallStretch stretch) {
    return stretch("wall thickness", stretch, stretch.thickness(), "thickness");
  }

  public Figure flare(WallStretch stretch) {
    return stretch("flare", stretch, stretch.flare(), "flare");
  }

  private Figure stretch(String label, WallStretch stretch, Double value, String field) {
    List<WallStretch> wall = foot.wall();
    return Figure.measured(
        label, value, "mm", path + "wall[" + wall.indexOf(stretch) + "]." + field);
  }

  private Measures measures() {
    return foot.measures();
  }

  private Kit kit() {
    return assessment.kit();
  }

  private Figure mm(Double value, String field) {
    return measured(value, "mm", path + "measures." + field);
  }

  private Figure deg(Double value, String field) {
    return measured(value, "deg", path + "measures." + field);
  }

  private static Figure measured(Double value, String unit, String path) {
    return Figure.measured(Fields.at(path).label(), value, unit, path);
  }

  private static Figure kit(String label, Double value, String field) {
    return Figure.measured(label, value, "mm", field);
  }
}
