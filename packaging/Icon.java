import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * Paints the icon, a sleeve on a sheet of paper with its stitch line and a notch, and writes it as
 * each system wants it: {@code icon.png}, {@code icon.ico} and {@code icon.icns}. Run as {@code
 * java packaging/Icon.java FOLDER}. The same run makes the same bytes.
 */
final class Icon {
  private static final Color PAPER = new Color(0xfb, 0xf9, 0xf4);
  private static final Color EDGE = new Color(0xd9, 0xd3, 0xc6);
  private static final Color TINT = new Color(0xdd, 0xe6, 0xee);
  private static final Color INK = new Color(0x1f, 0x26, 0x2d);
  private static final Color CHALK = new Color(0x2f, 0x62, 0x9b);

  private Icon() {}

  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    Files.write(folder.resolve("icon.png"), png(512));
    Files.write(folder.resolve("icon.ico"), ico(16, 24, 32, 48, 64, 256));
    Map<String, Integer> kinds = new LinkedHashMap<>();
    kinds.put("ic07", 128);
    kinds.put("ic08", 256);
    kinds.put("ic09", 512);
    kinds.put("ic10", 1024);
    Files.write(folder.resolve("icon.icns"), icns(kinds));
  }

  private static byte[] png(int size) throws IOException {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.transform(AffineTransform.getScaleInstance(size / 100.0, size / 100.0));
    paint(pen, size < 40);
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  /** On a square of 100 by 100, from the top left. */
  private static void paint(Graphics2D pen, boolean small) {
    RoundRectangle2D sheet = new RoundRectangle2D.Double(4, 4, 92, 92, 20, 20);
    pen.setColor(PAPER);
    pen.fill(sheet);
    pen.setColor(EDGE);
    pen.setStroke(new BasicStroke(small ? 4 : 2));
    pen.draw(sheet);
    Path2D cut = sleeve(0);
    pen.setColor(TINT);
    pen.fill(cut);
    pen.setColor(INK);
    pen.setStroke(new BasicStroke(small ? 7 : 4.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(cut);
    if (small) {
      return;
    }
    pen.setStroke(new BasicStroke(4.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    pen.draw(new Line2D.Double(50, 17.5, 50, 25));
    pen.setColor(CHALK);
    pen.setStroke(
        new BasicStroke(
            2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {6, 4}, 0));
    pen.draw(sleeve(7));
  }

  /** The outline, or what lies so far within it. */
  private static Path2D sleeve(double in) {
    Path2D path = new Path2D.Double();
    path.moveTo(13 + in * 1.3, 52 - in * 0.1);
    path.curveTo(30 + in * 0.6, 50 - in * 0.2, 34 + in * 0.4, 18 + in, 50, 18 + in);
    path.curveTo(
        66 - in * 0.4, 18 + in, 70 - in * 0.6, 50 - in * 0.2, 87 - in * 1.3, 52 - in * 0.1);
    path.lineTo(75 - in, 82 - in);
    path.lineTo(25 + in, 82 - in);
    path.closePath();
    return path;
  }

  /** The container of Windows: a directory of pictures, each a PNG. */
  private static byte[] ico(int... sizes) throws IOException {
    byte[][] pictures = new byte[sizes.length][];
    int total = 6 + 16 * sizes.length;
    for (int i = 0; i < sizes.length; i++) {
      pictures[i] = png(sizes[i]);
      total += pictures[i].length;
    }
    ByteBuffer file = ByteBuffer.allocate(total).order(ByteOrder.LITTLE_ENDIAN);
    file.putShort((short) 0).putShort((short) 1).putShort((short) sizes.length);
    int at = 6 + 16 * sizes.length;
    for (int i = 0; i < sizes.length; i++) {
      byte side = (byte) (sizes[i] == 256 ? 0 : sizes[i]);
      file.put(side).put(side).put((byte) 0).put((byte) 0);
      file.putShort((short) 1).putShort((short) 32).putInt(pictures[i].length).putInt(at);
      at += pictures[i].length;
    }
    for (byte[] picture : pictures) {
      file.put(picture);
    }
    return file.array();
  }

  /** The container of macOS: pictures by kind, each a PNG. */
  private static byte[] icns(Map<String, Integer> kinds) throws IOException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(body);
    for (Map.Entry<String, Integer> kind : kinds.entrySet()) {
      byte[] picture = png(kind.getValue());
      out.writeBytes(kind.getKey());
      out.writeInt(picture.length + 8);
      out.write(picture);
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    DataOutputStream whole = new DataOutputStream(file);
    whole.writeBytes("icns");
    whole.writeInt(body.size() + 8);
    body.writeTo(whole);
    return file.toByteArray();
  }
}
