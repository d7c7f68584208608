#include "app/desktop/panels/finding_details.h"
#include "tests/support/catch.h"

#include <QPushButton>
#include <QSignalSpy>

using namespace pumpwright;

TEST_CASE("the details of a finding ask for the page of its rule", "[panels][rule-page]") {
    FindingDetails details;
    Finding finding;
    finding.rule = "voltage-drop";
    finding.title = "Voltage drop";
    finding.remedies = {{say("Lay larger wires."), {}}};
    details.showFinding(&finding, {});
    QSignalSpy asked(&details, &FindingDetails::pageChosen);
    details.findChild<QPushButton*>(QStringLiteral("readAboutRule"))->click();
    REQUIRE(asked.count() == 1);
    CHECK(asked.front().front().toString() == QStringLiteral("voltage-drop"));
}
