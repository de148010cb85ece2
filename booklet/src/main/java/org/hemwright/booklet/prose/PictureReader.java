package org.hemwright.booklet.prose;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.geometry.Box;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.finding.Finding;

/** Reads {@code {picture NAME "what it shows"}}. */
record PictureReader(Places places, List<Finding> findings) {
  private static final Pattern FORM = Pattern.compile("(\\S+)\\s+[\"“](.+)[\"”]");
  private static final double SQUARE = 80;

  List<Block> read(ProsePlace place) {
    Matcher said = FORM.matcher(place.name());
    if (!said.matches()) {
      findings.add(Finding.fail("prose-picture-words", place.name()).at(place.origin()).build());
      return List.of();
    }
    Optional<Picture> picture = places.picture(said.group(1));
    if (picture.isEmpty()) {
      findings.add(
          ProseReader.unknown("prose-picture", said.group(1), places.pictures(), place.origin()));
      return List.of();
    }
    Figure figure =
        new Figure(
            "picture-" + said.group(1),
            new Sheet(new Box(0, 0, SQUARE, SQUARE), List.of()),
            said.group(2),
            List.of(new Inline.Own(said.group(2))),
            picture);
    return List.of(new Block.Drawing(figure));
  }
}
