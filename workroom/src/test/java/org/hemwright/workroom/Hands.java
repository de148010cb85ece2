package org.hemwright.workroom;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.URI;
import java.util.List;

/** What she does on a page of the workroom: she presses what is called so, and pastes. */
record Hands(Page page) {
  /** Presses the first button of just this name. */
  void press(String name) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true))
        .first()
        .click();
  }

  /** Goes to one of the jobs of the pattern: {@code Cloth}. */
  void job(String name) {
    page.locator("#jobs button", new Page.LocatorOptions().setHasText(name)).click();
  }

  /** Pastes words, as they come from another program, where the caret stands. */
  void paste(String words) {
    page.context()
        .grantPermissions(
            List.of("clipboard-read", "clipboard-write"),
            new BrowserContext.GrantPermissionsOptions()
                .setOrigin("http://" + URI.create(page.url()).getAuthority()));
    page.evaluate("text => navigator.clipboard.writeText(text)", words);
    page.keyboard().press("Control+v");
  }
}
