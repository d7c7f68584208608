#include "app/desktop/panels/finding_details.h"
#include "app/desktop/panels/rule_page.h"
#include "core/checks/rule.h"
#include "tests/support/catch.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTextBrowser>

using namespace pumpwright;

TEST_CASE("every rule's page is shown from the program's own files", "[panels][rule-page]") {
    RulePage page;
    for (const Rule* rule : rules()) {
        page.showRule(shown(rule->id));
        const QString text = page.page().toPlainText();
        INFO(rule->id);
        CHECK(text.startsWith(shown(rule->title)));
        CHECK(text.contains(QStringLiteral("Limit")));
        CHECK(text.contains(QStringLiteral("Remedies")));
    }
    CHECK(page.isVisible());
    const QString picture = qEnvironmentVariable("PUMPWRIGHT_PICTURES");
    if (!picture.isEmpty()) {
        page.showRule(QStringLiteral("sneak-path"));
        CHECK(page.grab().save(picture + QStringLiteral("/rule-page.png")));
    }
}

TEST_CASE("a page that is not there says so and what to do", "[panels][rule-page]") {
    RulePage page;
    page.showRule(QStringLiteral("no-such-rule"));
    CHECK(page.page().toPlainText().contains(QStringLiteral("Install the program again")));
}

TEST_CASE("the details of a finding ask for the page of its rule", "[panels][rule-page]") {
    FindingDetails details;
    Finding finding;
    finding.rule = "voltage-drop";
    finding.title = "Voltage drop";
    finding.remedies = {{"Lay larger wires.", {}}};
    details.showFinding(&finding, {});
    QSignalSpy asked(&details, &FindingDetails::pageChosen);
    details.findChild<QPushButton*>(QStringLiteral("readAboutRule"))->click();
    REQUIRE(asked.count() == 1);
    CHECK(asked.front().front().toString() == QStringLiteral("voltage-drop"));
}
