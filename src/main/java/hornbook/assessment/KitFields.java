package hornbook.assessment;

import static hornbook.assessment.Entry.amount;
import static hornbook.assessment.Entry.group;
import static hornbook.assessment.Entry.text;
import static hornbook.assessment.Entry.word;
import static hornbook.assessment.Unit.METRE;
import static hornbook.assessment.Unit.MM;

import java.util.List;

/** The fields of what is in the van. */
final class KitFields {
  static final List<Field> ALL =
      List.of(
          group(
              "wrap",
              Wrap.class,
              "casting tape",
              "From the packet; the layer from a tape that has set.",
              List.of(
                  amount("width", MM, 10, 300, "tape width", "From the packet."),
                  amount("rollLength", METRE, 0.1, 30, "roll length", "From the packet."),
                  amount(
                      "layerThickness",
                      MM,
                      0.1,
                      10,
                      "thickness of a layer",
                      "Calliper over a set piece, over the number of layers in it."))),
          group(
              "shoe",
              ShoeStock.class,
              "shoes",
              "The section of the shoes you would use here.",
              List.of(
                  amount("thickness", MM, 2, 40, "shoe thickness", "Foot face to ground face."),
                  amount("webWidth", MM, 5, 100, "web width", "Inner to outer edge."))),
          new Field(
              "shoeSizes",
              new FieldRows(
                  ShoeSize.class,
                  List.of(
                      text("label", "label", "As the box has it."),
                      amount(
                          "width", MM, 15, 350, "shoe width", "Outside to outside at the widest.")),
                  0,
                  60,
                  true),
              "shoe sizes",
              "The sizes in the van, with their width.",
              false),
          word("adhesive", Adhesive.class, "adhesive", "The kind of glue in the van."));

  private KitFields() {}
}
