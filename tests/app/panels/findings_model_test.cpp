#include "app/desktop/panels/findings_model.h"
#include "tests/support/catch.h"

#include <QAbstractItemModelTester>
#include <QPersistentModelIndex>

#include <random>

using namespace pumpwright;

namespace {

Finding findingAbout(const std::string& wire, SignalWord word = SignalWord::Warning) {
    Finding finding;
    finding.rule = "wire-current";
    finding.title = "Wire over its current capacity";
    finding.word = word;
    finding.wires = {WireId{wire}};
    finding.what = wire + " carries 30 A and may carry 20 A.";
    finding.value = 30;
    finding.limit = 20;
    finding.kind = QuantityKind::Current;
    finding.remedies = {{say("Use a thicker wire."), std::nullopt}};
    return finding;
}

} // namespace

TEST_CASE("a finding says its signal word as a word", "[panels][findings]") {
    FindingsModel model;
    model.setFindings({findingAbout("w1", SignalWord::Danger)});
    CHECK(model.index(0).data().toString().startsWith(QStringLiteral("DANGER: Wire over")));
    CHECK(findingValueText(*model.finding(model.index(0)), {}) == QStringLiteral("Found 30 A, limit 20 A"));
}

TEST_CASE("a new check keeps the rows that are still there", "[panels][findings]") {
    FindingsModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setFindings({findingAbout("w1"), findingAbout("w2"), findingAbout("w3")});
    const QPersistentModelIndex third(model.index(2));
    model.setFindings({findingAbout("w1"), findingAbout("w3")});
    REQUIRE(third.isValid());
    CHECK(third.row() == 1);
    CHECK(model.finding(third)->wires.front() == WireId{"w3"});
}

TEST_CASE("any two checks after each other leave the rows of the second", "[panels][findings]") {
    FindingsModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    std::minstd_rand random(20240607);
    for (int round = 0; round < 200; ++round) {
        std::vector<Finding> findings;
        for (int wire = 0; wire < 6; ++wire) {
            if (random() % 2 == 0) {
                findings.push_back(findingAbout("w" + std::to_string(wire)));
            }
        }
        model.setFindings(findings);
        REQUIRE(model.rowCount() == static_cast<int>(findings.size()));
        for (std::size_t row = 0; row < findings.size(); ++row) {
            REQUIRE(model.finding(model.index(static_cast<int>(row)))->wires == findings[row].wires);
        }
    }
}

TEST_CASE("a waived finding does not count as open", "[panels][findings]") {
    FindingsModel model;
    Finding waived = findingAbout("w1");
    waived.waiver = Waiver{"wire-current", {"w1"}, "short run, measured", "AB", 30};
    model.setFindings({waived, findingAbout("w2")});
    CHECK(model.openCount() == 1);
    CHECK(model.index(0).data(FindingsModel::WaivedRole).toBool());
}
