package hornbook.record.store;

import java.util.List;

/**
 * What came of checking a book.
 *
 * @param entries how many there are
 * @param remarks what is no fault, but worth a look
 */
public record Verified(int entries, List<BookFault> faults, List<String> remarks) {
  public Verified {
    faults = List.copyOf(faults);
    remarks = List.copyOf(remarks);
  }

  public boolean whole() {
    return faults.isEmpty();
  }
}
