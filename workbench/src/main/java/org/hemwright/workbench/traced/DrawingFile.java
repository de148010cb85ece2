package org.hemwright.workbench.traced;

import java.util.Locale;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.exchange.dxf.DxfReader;

/** Reads a drawing by the ending of its name. */
public final class DrawingFile {
  private DrawingFile() {}

  /**
   * Reads a drawing.
   *
   * @param file its name in the pattern folder; {@code .dxf} is read as DXF, all else as SVG
   * @param content the file's bytes
   */
  public static ReadDrawing read(String file, byte[] content) {
    return file.toLowerCase(Locale.ROOT).endsWith(".dxf")
        ? DxfReader.read(file, content)
        : DrawingReader.read(file, content);
  }
}
