package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Making;

/** What a document says of the pattern that no size changes. */
record PatternFacts(
    Details details,
    Size base,
    List<Fabric> fabrics,
    List<View> views,
    PaperChoices paper,
    List<Acceptance> acceptances,
    Making making) {
  PatternFacts {
    fabrics = List.copyOf(fabrics);
    views = List.copyOf(views);
    acceptances = List.copyOf(acceptances);
  }
}
