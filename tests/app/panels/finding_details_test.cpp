#include "app/desktop/panels/finding_details.h"
#include "app/desktop/translations.h"
#include "tests/support/catch.h"

#include <QLocale>
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

namespace {

/// The name of the step that choosing the finding's only remedy asks for.
std::string chosenStep(const Remedy& remedy) {
    FindingDetails details;
    Finding finding;
    finding.rule = "supplies-opposed";
    finding.remedies = {remedy};
    details.showFinding(&finding, {});
    Edit chosen;
    QObject::connect(&details, &FindingDetails::remedyChosen, [&](const Edit& edit) { chosen = edit; });
    details.findChild<QPushButton*>(QStringLiteral("applyRemedy"))->click();
    CHECK(chosen.changes.size() == 1);
    return chosen.name;
}

} // namespace

TEST_CASE("a remedy's step has its own name in English, and what the remedy says in German",
          "[panels][translations]") {
    const Remedy remedy{say("Delete {}.", std::string("W3")), Edit{"Delete W3 here", {takeWire({"w3"})}}};
    CHECK(chosenStep(remedy) == "Delete W3 here");
    speak(QLocale(QLocale::German));
    CHECK(chosenStep(remedy) == "W3 löschen");
    speak(QLocale(QLocale::English));
}
