package org.hemwright.exchange.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RuleTable;
import org.junit.jupiter.api.Test;

class RuleTableReaderTest {
  private static ReadRules read(String text) {
    return RuleTableReader.read("rules.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> codes(String text) {
    ReadRules read = read(text);
    assertThat(read.table()).isEmpty();
    return read.findings().stream().map(Finding::code).toList();
  }

  /** A quarter inch is 6.35 mm (definition). */
  @Test
  void aRowIsOneWayOfOnePoint() {
    RuleTable table =
        read("""
        # her own notes
        Piece,Edge,At,Step (in),8 to 10,10 to 12,# note
        front,side,start,right,1/4,1 1/2,
        front,side,40% from end,down,-0.5,,
        front,side,dot hip,left,1
        front,side,2 in from start,up,1
        """)
            .table()
            .orElseThrow();
    assertThat(table.rules()).hasSize(4);
    assertThat(table.rules().get(0))
        .isEqualTo(
            new RuleTable.Rule(
                "front",
                "side",
                new RulePlace.End(false),
                false,
                List.of(
                    new RuleTable.Step("8", "10", 6.35),
                    new RuleTable.Step("10", "12", 1.5 * 25.4)),
                new Origin("rules.csv", 3, 1)));
    assertThat(table.rules().get(1).place()).isEqualTo(new RulePlace.Share(0.4, true));
    assertThat(table.rules().get(1).steps()).containsExactly(new RuleTable.Step("8", "10", 12.7));
    assertThat(table.rules().get(2).place()).isEqualTo(new RulePlace.Dot("hip"));
    assertThat(table.rules().get(2).steps()).containsExactly(new RuleTable.Step("8", "10", -25.4));
    assertThat(table.rules().get(3).place()).isEqualTo(new RulePlace.Distance(50.8, false));
  }

  @Test
  void everySlipIsTold() {
    String head = "piece,edge,at,step (mm),8 to 10\n";
    assertThat(codes("")).containsExactly("rules-headings");
    assertThat(codes("piece,edge,where\n")).containsExactly("rules-headings");
    assertThat(codes("piece,edge,at,step (mm),8\n")).containsExactly("rules-sizes");
    assertThat(codes(head + "front,side,middle,up,2\n")).containsExactly("rules-at");
    assertThat(codes(head + "front,side,end,over,2\n")).containsExactly("rules-way");
    assertThat(codes(head + "front,side,end,up,much\n,side,end,up,3\nfront\n"))
        .containsExactly("rules-number", "rules-name", "rules-name");
    assertThat(codes(head + "front,side,end,up,1,2\n")).containsExactly("rules-number");
    assertThat(codes(head + "front,\"side,end,up,1\n")).containsExactly("rules-quote");
  }
}
