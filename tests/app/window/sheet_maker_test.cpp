#include "app/desktop/sheet_maker.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <QSignalSpy>
#include <QTest>

using namespace pumpwright;

namespace {

constexpr int kPatience_ms = 120000;

/// A press that finds vacuum, and little time beside it.
Circuit shortDrive() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder).wire("F1.2", "B1.1", 0.75e-6).wire("B1.2", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(14);
    plan.presses.push_back({12, 0.5});
    return builder.plan(plan).build();
}

/// The sheet of a circuit, and how often progress of its breakdowns was reported.
struct Made {
    SheetPaper paper;
    int reports = 0;
};

Made make(SheetMaker& maker, const Circuit& circuit) {
    Made made;
    bool isMade = false;
    QSignalSpy reports(&maker, &SheetMaker::progress);
    maker.make({circuit, wiringSheet(circuit, {}, {}, {}), nullptr, {}, {}}, [&](const SheetPaper& paper) {
        made.paper = paper;
        isMade = true;
    });
    REQUIRE(QTest::qWaitFor([&] { return isMade; }, kPatience_ms));
    made.reports = static_cast<int>(reports.count()) - 1; // the last says that it is made
    return made;
}

void prepare(SheetMaker& maker, const Circuit& circuit) {
    QSignalSpy prepared(&maker, &SheetMaker::prepared);
    maker.prepare(circuit);
    CHECK(maker.isPreparing());
    REQUIRE(prepared.wait(kPatience_ms));
    CHECK_FALSE(maker.isPreparing());
}

} // namespace

TEST_CASE("a sheet that was prepared has the faults of one that was not, and simulates none for them",
          "[window][sheet]") {
    const Circuit circuit = shortDrive();
    SheetMaker plain(nullptr);
    const Made unprepared = make(plain, circuit);
    REQUIRE(unprepared.reports > 0);
    REQUIRE_FALSE(unprepared.paper.content.faults.rows.empty());

    SheetMaker maker(nullptr);
    prepare(maker, circuit);
    const Made prepared = make(maker, circuit);
    CHECK(prepared.reports == 0);
    CHECK(prepared.paper.content.faults.rows == unprepared.paper.content.faults.rows);
}

TEST_CASE("moving a part leaves what was prepared of use, changing a value does not", "[window][sheet]") {
    Circuit circuit = shortDrive();
    SheetMaker maker(nullptr);
    prepare(maker, circuit);
    circuit.parts.at({"M1"}).at = {50, 50};
    CHECK(make(maker, circuit).reports == 0);
    circuit.parts.at({"M1"}).values["resistance_ohm"] = 1.1;
    CHECK(make(maker, circuit).reports > 0);
}

TEST_CASE("preparing that is stopped says nothing and leaves the next sheet whole", "[window][sheet]") {
    const Circuit circuit = shortDrive();
    SheetMaker maker(nullptr);
    QSignalSpy prepared(&maker, &SheetMaker::prepared);
    maker.prepare(circuit);
    maker.stopPreparing();
    CHECK_FALSE(maker.isPreparing());
    const Made made = make(maker, circuit);
    CHECK(made.reports > 0);
    CHECK_FALSE(made.paper.content.faults.rows.empty());
    CHECK(prepared.count() == 0);
}

TEST_CASE("a sheet asked for while it is prepared waits for that, and shows how far it is",
          "[window][sheet]") {
    const Circuit circuit = shortDrive();
    SheetMaker maker(nullptr);
    maker.prepare(circuit);
    const Made made = make(maker, circuit);
    CHECK_FALSE(made.paper.content.faults.rows.empty());
}
