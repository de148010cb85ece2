package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;

/**
 * Why a line is not one of the forms it starts like.
 *
 * <p>It tries the mends a person would try at the furthest place that was understood: another word,
 * a word less, a word more, quotes. The first that makes the whole line readable is offered, and
 * the line is read as if it were mended, so that the rest of the document makes sense.
 *
 * @param finding what is wrong
 * @param mended the statement as it would be read after the mend
 */
record Complaint(Finding finding, Optional<Object> mended) {
  /** Longer statements are not searched for a mend. */
  private static final int MOST_TOKENS = 300;

  /** Says what is wrong with the tokens of a line that could not be read as these forms. */
  static Complaint about(Source source, List<Token> tokens, List<Form> forms) {
    Reading reading = new Reading(source, tokens);
    reading.whole(forms);
    if (reading.furthest().refusal().isPresent()) {
      return new Complaint(reading.furthest().refusal().get(), Optional.empty());
    }
    Mender mender = new Mender(source, tokens, forms, reading);
    if (tokens.size() <= MOST_TOKENS) {
      Optional<Complaint> mend = mender.mend();
      if (mend.isPresent()) {
        return mend.get();
      }
    }
    return new Complaint(mender.unmended(), Optional.empty());
  }
}
