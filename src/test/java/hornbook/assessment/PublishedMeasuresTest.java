package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.read.ReadResult;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No measure that was ever written down of a horse is refused as impossible. */
class PublishedMeasuresTest {
  /**
   * Least and most as published; where no source stands, common knowledge of the trade: the
   * smallest foals and the largest draught horses.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          horse.weight                     | 360 kg  | 575 kg   | Turner 1992, weight and toe length
          horse.weight                     | 500.5 kg | 1200 lb | Carroll & Huntington 1988; Turner 1992
          horse.weight                     | 8 kg    | 1520 kg  | no source: newborn miniature, heaviest draught horse
          horse.girth                      | 190 cm  | 190 cm   | Carroll & Huntington 1988
          horse.girth                      | 35 cm   | 300 cm   | no source: newborn miniature, large draught horse
          horse.bodyLength                 | 165 cm  | 165 cm   | Carroll & Huntington 1988
          horse.bodyTemperature            | 35 C    | 42 C     | no source: chilled foal, heat stroke
          horse.ageYears                   | 0       | 62       | no source: the oldest horse on record
          horse.laminitisGrade             | 0       | 4        | Obel 1948
          visit.airTemperature             | 20 C    | 28 C     | Koh 2015
          feet[0].lameness                 | 0       | 5        | American equine practitioners' scale
          feet[0].measures.toeLength       | 76 mm   | 89 mm    | Turner 1992
          feet[0].measures.toeLength       | 90 mm   | 100 mm   | worked example of a raised foot
          feet[0].measures.heelLength      | 25 mm   | 40 mm    | worked example of a raised foot
          feet[0].measures.toeAngle        | 45 deg  | 60 deg   | Lungwitz 1913; Fleming 1869
          feet[0].measures.toeAngle        | 49.9    | 55.1     | Wiggers 2015
          feet[0].measures.toeAngle        | 30 deg  | 100 deg  | no source: long-toed, worst club foot
          feet[0].measures.heelAngle       | 46 deg  | 48 deg   | Turner 1992
          feet[0].measures.coronetGirth    | 12.5 in | 14 in    | trade journal, hoof load index
          feet[0].measures.coronetGirth    | 110 mm  | 600 mm   | no source: newborn miniature, large draught horse
          feet[0].measures.frogWidth       | 40 mm   | 41 mm    | Turner 1992
          feet[0].measures.medialHeelHeight | 41 mm  | 46 mm    | O'Grady & Castelijns 2011
          feet[0].measures.nailExitHeight  | 16 mm   | 41 mm    | Lungwitz 1913
          feet[0].measures.palmarAngle     | 2 deg   | 10 deg   | usual range, quoted
          feet[0].measures.palmarAngle     | -15 deg | 30 deg   | no source: sunken, badly rotated
          feet[0].measures.width           | 30 mm   | 260 mm   | no source: newborn miniature, large draught horse
          feet[0].wall[0].thickness        | 5 mm    | 16 mm    | Lungwitz 1913
          kit.shoe.thickness               | 11 mm   | 11 mm    | Lungwitz 1913
          kit.shoe.thickness               | 3.2 mm  | 10 mm    | US Department of Agriculture 1916
          """)
  void isAllowed(String path, String least, String most, String source) {
    for (String value : new String[] {least, most}) {
      ReadResult result = Read.result(Read.foot("lameness: 1"), path + "=" + value);
      assertThat(result).as(source).isInstanceOf(ReadResult.Good.class);
    }
  }
}
