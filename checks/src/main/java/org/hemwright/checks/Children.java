package org.hemwright.checks;

import java.util.Optional;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.ChildSize;
import org.hemwright.pattern.body.Wearers;

/** Whom a size is for, where the document says that its chart is for the young. */
final class Children {
  private Children() {}

  static Optional<ChildSize> of(SizedPattern sized, Pattern pattern) {
    return pattern
        .details()
        .wearers()
        .filter(
            wearers ->
                switch (wearers.people()) {
                  case CHILDREN, BABIES, TEENAGERS -> true;
                  case WOMEN, MEN, ADULTS -> false;
                })
        .map(Wearers::people)
        .map(people -> ChildSize.of(sized.size(), pattern.chart()));
  }
}
