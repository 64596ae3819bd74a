package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.field.FieldTable.group;
import static hornbook.assessment.field.FieldTable.text;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.quantity.Unit.METRE;
import static hornbook.assessment.quantity.Unit.MM;

import hornbook.assessment.Adhesive;
import hornbook.assessment.CastingTape;
import hornbook.assessment.Kit;
import hornbook.assessment.ShoeSize;
import hornbook.assessment.ShoeStock;
import java.util.List;

/** The fields of what is in the van. */
final class KitFields {
  static final RecordShape SHAPE = new OfKit();
  static final List<Field> ALL =
      List.of(
          group(
              "wrap",
              new OfWrap(),
              "casting tape",
              "From the packet; the layer from a tape that has set.",
              List.of(
                  amount("width", MM, 10, 300, 50, "tape width", "From the packet."),
                  amount("rollLength", METRE, 0.1, 30, 3.6, "roll length", "From the packet."),
                  amount(
                      "layerThickness",
                      MM,
                      0.1,
                      10,
                      1.2,
                      "thickness of a layer",
                      "Calliper over a set piece, over the number of layers in it."),
                  whole("rolls", 0, 500, "", "rolls of tape", "How many are in the van."))),
          group(
              "shoe",
              new OfShoeStock(),
              "shoes",
              "The section of the shoes you would use here.",
              List.of(
                  amount("thickness", MM, 2, 40, 10, "shoe thickness", "Foot face to ground face."),
                  amount("webWidth", MM, 5, 100, 22, "web width", "Inner to outer edge."))),
          new Field(
              "shoeSizes",
              new FieldRows(
                  new OfShoeSize(),
                  List.of(
                      text("label", "label", "As the box has it."),
                      amount(
                          "width",
                          MM,
                          15,
                          350,
                          125,
                          "shoe width",
                          "Outside to outside at the widest.")),
                  0,
                  60,
                  true),
              "shoe sizes",
              "The sizes in the van, with their width.",
              false),
          word("adhesive", Adhesive.values(), "adhesive", "The kind of adhesive in the van."));

  private KitFields() {}

  private static final class OfKit extends RecordShape {
    @Override
    Class<Kit> type() {
      return Kit.class;
    }

    @Override
    public Object[] take(Object record) {
      Kit r = (Kit) record;
      return new Object[] {r.wrap(), r.shoe(), r.shoeSizes(), r.adhesive()};
    }

    @Override
    public Object build(Components c) {
      return new Kit(c.next(), c.next(), c.next(), c.next());
    }
  }

  private static final class OfWrap extends RecordShape {
    @Override
    Class<CastingTape> type() {
      return CastingTape.class;
    }

    @Override
    public Object[] take(Object record) {
      CastingTape r = (CastingTape) record;
      return new Object[] {r.width(), r.rollLength(), r.layerThickness(), r.rolls()};
    }

    @Override
    public Object build(Components c) {
      return new CastingTape(c.next(), c.next(), c.next(), c.next());
    }
  }

  private static final class OfShoeStock extends RecordShape {
    @Override
    Class<ShoeStock> type() {
      return ShoeStock.class;
    }

    @Override
    public Object[] take(Object record) {
      ShoeStock r = (ShoeStock) record;
      return new Object[] {r.thickness(), r.webWidth()};
    }

    @Override
    public Object build(Components c) {
      return new ShoeStock(c.next(), c.next());
    }
  }

  private static final class OfShoeSize extends RecordShape {
    @Override
    Class<ShoeSize> type() {
      return ShoeSize.class;
    }

    @Override
    public Object[] take(Object record) {
      ShoeSize r = (ShoeSize) record;
      return new Object[] {r.label(), r.width()};
    }

    @Override
    public Object build(Components c) {
      return new ShoeSize(c.next(), c.next());
    }
  }
}
