package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.Media;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The shifts of a year, over the sample plant. */
class ShiftsPageTest extends BrowserTest {

    private Locator lead() {
        return page().locator(".tr-lead");
    }

    private Locator names() {
        return page().locator("vaadin-grid a:visible");
    }

    /** A narrow column that shows one number in each row, in the order of the rows. */
    private List<Double> meanShifts() {
        return page().locator("vaadin-grid .tr-figures:visible").evaluateAll("""
                cells => {
                  const heading = [...document.querySelectorAll('vaadin-grid-sorter')]
                    .find(sorter => sorter.textContent.startsWith('Mean shift')).getBoundingClientRect();
                  return cells
                    .map(cell => ({ box: cell.getBoundingClientRect(), text: cell.textContent }))
                    .filter(cell => Math.abs(cell.box.left - heading.left) < 8)
                    .sort((one, other) => one.box.top - other.box.top)
                    .map(cell => cell.text);
                }
                """) instanceof List<?> texts
                ? texts.stream().map(Object::toString).map(Double::valueOf).toList()
                : List.of();
    }

    @Test
    void theSentenceAddsUpAndItsNumbersLeadToTheirShifts() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/shifts");
        assertThat(lead()).containsText(Pattern.compile("^In 2026, \\d+ shifts were found"));
        names().first().waitFor();
        screenshots("shifts");
        Accessibility.assertNothingGrave(page());

        List<Integer> numbers = lead().locator("a").allInnerTexts().stream()
                .map(text -> Integer.valueOf(text.replaceAll("\\D", "")))
                .toList();
        int outcomes = numbers.subList(1, numbers.size() - 1).stream()
                .mapToInt(Integer::intValue)
                .sum();
        assertThat(outcomes).isEqualTo(numbers.getFirst());

        lead().locator("a").last().click();
        assertThat(page()).hasURL(Pattern.compile("/shifts\\?year=2026&recordable=yes$"));
        assertThat(names()).hasCount(numbers.getLast());
        assertThat(page().locator("main")).containsText("a professional decides");
    }

    @Test
    void aHeadingOrdersTheList() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/shifts?year=2025&outcome=confirmed");
        names().first().waitFor();
        Locator heading = page().getByText("Mean shift (dB)", new Page.GetByTextOptions().setExact(true))
                .locator("visible=true");
        heading.click();
        page().waitForTimeout(500);
        List<Double> rising = meanShifts();
        assertThat(rising).hasSizeGreaterThan(3).isSorted();
        heading.click();
        page().waitForTimeout(500);
        assertThat(meanShifts()).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }

    @Test
    void onPaperTheListStandsWholeAndWithoutFields() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/shifts?year=2025");
        names().first().waitFor();
        int shifts = Integer.parseInt(lead().locator("a").first().innerText().replaceAll("\\D", ""));
        page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

        assertThat(names()).hasCount(shifts);
        assertThat(page().getByLabel("Name or number")).isHidden();
        BoundingBox last = names().last().boundingBox();
        BoundingBox foot = page().locator("footer").boundingBox();
        assertThat(last.y + last.height).isLessThan(foot.y);
        assertThat(page().locator("footer")).containsText("Health record");
    }

    @Test
    void aYearWithoutShiftsSaysSo() {
        signInAs(DemoAccounts.NURSE);
        open("/shifts?year=1999");
        assertThat(lead()).hasText("In 1999, no shift was found.");
        assertThat(page().locator(".tr-empty")).containsText("No test of 1999");
        page().getByLabel("Year", new Page.GetByLabelOptions().setExact(true)).click();
        page().locator("vaadin-combo-box-item:visible").getByText("2024").click();
        assertThat(page()).hasURL(Pattern.compile("/shifts\\?year=2024$"));
        assertThat(page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .hasText("Shifts");
        assertThat(lead()).containsText("In 2024, ");
    }
}
