package org.hemwright.workroom.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class PresenceTest {
  private static final Duration LONG = Duration.ofSeconds(50);

  private static CompletableFuture<Void> waiting(
      Presence presence, Duration first, Duration grace) {
    return CompletableFuture.runAsync(
        () -> {
          try {
            presence.awaitNobody(first, grace);
          } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
          }
        });
  }

  @Test
  void nobodyComesAtAll() throws Exception {
    waiting(new Presence(), Duration.ofMillis(20), LONG).get(40, TimeUnit.SECONDS);
  }

  @Test
  void itGoesOnWhileAWindowIsOpenAndEndsAWhileAfterTheLast() throws Exception {
    Presence presence = new Presence();
    presence.entered();
    presence.entered();
    CompletableFuture<Void> end = waiting(presence, Duration.ZERO, Duration.ofMillis(20));
    presence.left();
    Thread.sleep(200);
    assertThat(end).isNotDone();
    presence.left();
    end.get(40, TimeUnit.SECONDS);
  }

  @Test
  void aPageThatIsLoadedAgainDoesNotEndIt() throws Exception {
    Presence presence = new Presence();
    presence.entered();
    CompletableFuture<Void> end = waiting(presence, LONG, LONG);
    presence.left();
    presence.entered();
    Thread.sleep(200);
    assertThat(end).isNotDone();
    end.cancel(true);
  }
}
